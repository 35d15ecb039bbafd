using System.Diagnostics;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Why there is a journal and a lock. When this fails, the library has become better, and the store may become simpler.</summary>
public sealed class BareLibraryTests : IDisposable
{
    private readonly TempFolder _folder = new();

    [Fact]
    public async Task Two_processes_on_the_bare_library_lose_writes()
    {
        const int each = 200;
        Process[] both = [.. Enumerable.Range(0, 2).Select(_ => StoreDriver.Start("bare", _folder.File("bare.db"), $"{each}"))];
        string[][] said = await Task.WhenAll(both.Select(one => StoreDriver.Lines(one, TestContext.Current.CancellationToken)));
        string[] alone = await StoreDriver.Lines(StoreDriver.Start("bare-count", _folder.File("bare.db")), TestContext.Current.CancellationToken);

        string after = alone.Length == 1 ? alone[0] : "unreadable";
        Figures.Print($"2 processes x {each} counts: they said {string.Join(" and ", said.Select(lines => lines.LastOrDefault() ?? "nothing"))}; the counter says {after}");
        Assert.False(said.All(lines => lines is ["done"]) && after == $"{2 * each}");
    }

    public void Dispose() => _folder.Dispose();
}
