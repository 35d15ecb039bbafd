using System.Diagnostics;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: no room on the disk, at every step of a save.</summary>
public sealed class SmallDiskTests
{
    // A file system of four megabytes in a mount name space of its own, with all but so many pages taken.
    [Fact]
    public async Task Whatever_is_free_a_full_disk_loses_nothing_and_works_again_when_there_is_room()
    {
        using TempFolder mount = new();
        const string script = "mount -t tmpfs -o size=4m none \"$0\" || exit 77; exec \"$@\"";
        using Process squeezed = StoreDriver.StartBy(["unshare", "--map-root-user", "--mount", "sh", "-c", script, mount.Path], "squeeze", mount.Path, "400");
        string[] lines = await StoreDriver.Lines(squeezed, TestContext.Current.CancellationToken);

        Assert.SkipWhen(squeezed.ExitCode is 77 or 1 && lines.Length == 0, "This system does not let us mount a small file system.");
        Assert.Equal(100, lines.Length);
        Assert.All(lines, line => Assert.EndsWith("all there works again", line, StringComparison.Ordinal));
        string[] outcomes = [.. lines.Select(line => line.Split(' ')[1])];
        Assert.Equal(["NoSpace", "Saved"], outcomes.Distinct().Order(StringComparer.Ordinal));
        Figures.Print($"100 amounts of room from 4 to 400 kB: {outcomes.Count(one => one == "NoSpace")} times full ({string.Join(" ", lines.Select(line => line.Split(' ')[2]).Distinct())} saves before), nothing lost, all work again");
    }
}
