using System.Diagnostics;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class FullDiskTests : IDisposable
{
    private readonly StoreCopy _whole = new();

    [Fact]
    public void Too_little_room_refuses_before_anything_is_written()
    {
        RevisionStamp last = Sample.SaveRevisions(_whole.Store, "K-1", 2);
        long length = new FileInfo(_whole.Journal).Length;
        LiteDbPlanStore full = new(_whole.Options with { MinimumFreeBytes = long.MaxValue });

        Assert.IsType<AppendResult.NoSpace>(full.Append(Sample.Plan("K-1", last.Reference, """{"week":3}""")));
        Assert.Equal(length, new FileInfo(_whole.Journal).Length);
        Assert.Equal(last, full.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
    }

    [Fact]
    public void Reading_goes_on_without_room_to_make_the_index_again()
    {
        RevisionStamp last = Sample.SaveRevisions(_whole.Store, "K-1", 2);
        File.WriteAllText(_whole.Index, "spoiled");
        LiteDbPlanStore full = new(_whole.Options with { MinimumFreeBytes = long.MaxValue });

        Assert.Equal(last, full.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Equal(last, _whole.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
    }

    // A file system of two megabytes in a mount name space of its own; where that is not allowed the test cannot be run.
    [Fact]
    public async Task A_disk_that_fills_up_keeps_everything_confirmed_readable()
    {
        using TempFolder mount = new();
        const string script = "mount -t tmpfs -o size=2m none \"$0\" || exit 77; exec \"$@\"";
        using Process filler = StoreDriver.StartBy(["unshare", "--map-root-user", "--mount", "sh", "-c", script, mount.Path], "fill", mount.File("plans"));
        string[] lines = await StoreDriver.Lines(filler, TestContext.Current.CancellationToken);

        Assert.SkipWhen(filler.ExitCode is 77 or 1 && lines.Length == 0, "This system does not let us mount a small file system.");
        Assert.Equal(["NoSpace", "all there", "sound"], lines);
    }

    public void Dispose() => _whole.Dispose();
}
