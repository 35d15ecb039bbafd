using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

public sealed class LiteDbPlanStoreTests : PlanStoreContract
{
    private readonly List<TempFolder> _folders = [];

    public LiteDbPlanStoreTests() => Store = Another();

    protected override IPlanStore Store { get; }

    [Fact]
    public void Another_instance_finds_the_same_records()
    {
        RevisionStamp last = Sample.SaveRevisions(Store, "K-1", 5);
        LiteDbPlanStore reopened = new(new StoreOptions(_folders[0].Path, Sample.Fields));

        Assert.Equal(last, reopened.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.Equal(Store.History("K-1", RecordKind.Plan), reopened.History("K-1", RecordKind.Plan));
        Assert.True(reopened.Verify().IsSound);
    }

    [Fact]
    public void Reading_and_refusing_leave_every_file_as_it_was()
    {
        Sample.SaveRevisions(Store, "K-1", 3);
        string[] before = Contents();

        Store.Load("K-1");
        Store.List(new CaseQuery());
        Store.Verify();
        Store.Append(Sample.Plan("K-1", null, """{"stale":true}"""));

        Assert.Equal(before, Contents());
    }

    [Fact]
    public void Works_again_when_the_folder_is_reached_by_a_symbolic_link()
    {
        RevisionStamp last = Sample.SaveRevisions(Store, "K-1", 1);
        using TempFolder beside = new();
        Directory.CreateSymbolicLink(beside.File("link"), _folders[0].Path);
        LiteDbPlanStore linked = new(new StoreOptions(beside.File("link"), Sample.Fields));

        Sample.Saved(linked.Append(Sample.Plan("K-1", last.Reference, """{"by":"link"}""")));
        Assert.Equal(2, Store.Generation());
    }

    [Fact]
    public void Asking_whether_somebody_saved_waits_for_nobody_and_makes_nothing()
    {
        Sample.SaveRevisions(Store, "K-1", 3);
        using (StoreLock.Take(new StoreFolder(_folders[0].Path), exclusive: true, TimeSpan.FromSeconds(10)))
        {
            Assert.False(Store.HasChangedSince(3));
        }

        string nowhere = _folders[0].File("nowhere");
        Assert.False(new LiteDbPlanStore(new StoreOptions(nowhere, Sample.Fields)).HasChangedSince(0));
        Assert.False(Directory.Exists(nowhere));
    }

    [Fact]
    public void Others_save_while_a_verification_reads_and_it_checks_that_too()
    {
        Sample.SaveRevisions(Store, "K-1", 150);
        bool hasSaved = false;
        LiteDbPlanStore verifying = new(new StoreOptions(_folders[0].Path, Sample.Fields) { Progress = new Meanwhile(Save) });

        VerifyReport report = verifying.Verify();

        Assert.Equal((151, 2), (report.Entries, report.Cases));
        Assert.Empty(report.Problems);
        Assert.Equal(Store.Status().HeadHash, report.TailHash);

        void Save()
        {
            if (!hasSaved)
            {
                hasSaved = true;
                Sample.SaveRevisions(Store, "K-2", 1);
            }
        }
    }

    private sealed class Meanwhile(Action work) : IProgress<WorkDone>
    {
        public void Report(WorkDone value) => work();
    }

    [Fact]
    public void A_mark_of_an_older_program_is_made_again()
    {
        RevisionStamp last = Sample.SaveRevisions(Store, "K-1", 2);
        string mark = _folders[0].File("plans.mark");
        string[] words = File.ReadAllText(mark).Split(' ');
        File.WriteAllText(mark, string.Join(' ', ["M1", words[1], .. words[3..]]));

        Assert.True(Store.HasChangedSince(1));
        Assert.Equal(last, Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp);
        Assert.StartsWith("M2 2 2 ", File.ReadAllText(mark), StringComparison.Ordinal);
    }

    protected override IPlanStore Another()
    {
        _folders.Add(new TempFolder());
        return new LiteDbPlanStore(new StoreOptions(_folders[^1].Path, Sample.Fields));
    }

    protected override void Dispose(bool disposing)
    {
        _folders.ForEach(folder => folder.Dispose());
        base.Dispose(disposing);
    }

    private string[] Contents() =>
        [.. Directory.EnumerateFiles(_folders[0].Path).Order(StringComparer.Ordinal).Select(file => file + Convert.ToHexString(File.ReadAllBytes(file)))];
}
