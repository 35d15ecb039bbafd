using System.Globalization;
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
        const int each = 500;
        Process[] both = [.. Enumerable.Range(0, 2).Select(_ => StoreDriver.Start("bare", _folder.File("bare.db"), $"{each}"))];
        await Task.WhenAll(both.Select(async one => Assert.Equal("ready", await one.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))));
        Array.ForEach(both, one => one.StandardInput.WriteLine());
        string[][] said = await Task.WhenAll(both.Select(one => StoreDriver.Lines(one, TestContext.Current.CancellationToken)));
        string[] alone = await StoreDriver.Lines(StoreDriver.Start("bare-count", _folder.File("bare.db")), TestContext.Current.CancellationToken);

        int confirmed = said.Sum(lines => int.Parse(Assert.Single(lines), CultureInfo.InvariantCulture));
        int? kept = alone is [var number] ? int.Parse(number, CultureInfo.InvariantCulture) : null;
        Figures.Print($"2 processes on the bare library: {confirmed} counts confirmed, {(kept is int there ? $"{confirmed - there} of them lost" : "the file cannot be read any more")}");
        Assert.NotEqual(0, confirmed);
        Assert.True(kept is null || kept < confirmed, "Nothing was lost.");
    }

    public void Dispose() => _folder.Dispose();
}
