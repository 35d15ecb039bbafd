using System.Diagnostics;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: readers who never pause.</summary>
public sealed class ReadersBesideWriterTests : IDisposable
{
    private const int Saves = 200;
    private readonly StoreCopy _shared = new();

    // No time is asserted: a writer that starved would meet the deadline of the lock, and that is what fails here.
    [Fact]
    public async Task A_writer_gets_through_beside_four_readers_in_a_loop()
    {
        for (int number = 0; number < 50; number++)
        {
            Sample.SaveRevisions(_shared.Store, $"K-{number}", 1);
        }

        Process[] readers = [.. Enumerable.Range(0, 4).Select(number => StoreDriver.Start("read", _shared.File(""), $"K-{number}"))];
        List<double> times = [];
        try
        {
            await Task.WhenAll(readers.Select(async reader => Assert.Equal("reading", await reader.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken))));
            RevisionRef? head = null;
            for (int save = 0; save < Saves; save++)
            {
                Stopwatch watch = Stopwatch.StartNew();
                head = Sample.Saved(_shared.Store.Append(Sample.Plan("K-W", head, $$"""{"week":{{save}}}"""))).Reference;
                times.Add(watch.Elapsed.TotalMilliseconds);
                await Task.Delay(20, TestContext.Current.CancellationToken);
            }
        }
        finally
        {
            Array.ForEach(readers, reader => reader.Kill());
        }

        Figures.Print($"{Saves} saves beside 4 readers: p50 {Figures.Share(times, 0.5):F1} ms, p99 {Figures.Share(times, 0.99):F1} ms, slowest {times.Max():F1} ms");
        Assert.Equal(Saves, _shared.Store.History("K-W", RecordKind.Plan).Count);
        Assert.True(_shared.Store.Verify().IsSound);
    }

    public void Dispose() => _shared.Dispose();
}
