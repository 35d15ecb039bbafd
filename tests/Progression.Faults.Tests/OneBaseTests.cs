using System.Diagnostics;
using System.Globalization;
using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>Fault: several save on the same base at the same moment.</summary>
public sealed class OneBaseTests : IDisposable
{
    private const int Rounds = 10;
    private readonly StoreCopy _shared = new();

    [Fact]
    public async Task Of_eight_writers_from_one_base_one_wins_and_seven_see_the_conflict()
    {
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        RevisionStamp head = Sample.SaveRevisions(_shared.Store, "K-1", 1);
        for (int round = 0; round < Rounds; round++)
        {
            string revision = head.Revision.ToString(CultureInfo.InvariantCulture);
            Process[] writers = [.. Enumerable.Range(0, 8).Select(number => StoreDriver.Start("once", _shared.File(""), "K-1", revision, head.Hash, $"writer-{round}-{number}"))];
            await Task.WhenAll(writers.Select(async writer => Assert.Equal("ready", await writer.StandardOutput.ReadLineAsync(cancellation))));
            Array.ForEach(writers, writer => writer.StandardInput.WriteLine());
            string[][] answers = await Task.WhenAll(writers.Select(writer => StoreDriver.Lines(writer, cancellation)));

            Assert.Equal(["Conflict", "Conflict", "Conflict", "Conflict", "Conflict", "Conflict", "Conflict", "Saved"], answers.Select(Assert.Single).Order(StringComparer.Ordinal));
            RevisionStamp next = _shared.Store.Load("K-1")!.Head(RecordKind.Plan)!.Stamp;
            Assert.Equal((head.Revision + 1, head.Hash), (next.Revision, next.PreviousHash));
            head = next;
        }

        Assert.Equal(Rounds + 1, _shared.Store.Generation());
        Assert.True(_shared.Store.Verify().IsSound);
        Figures.Print($"{Rounds} rounds of 8 writers: {Rounds} saved, {7 * Rounds} conflicts, {_shared.Store.Generation()} entries");
    }

    public void Dispose() => _shared.Dispose();
}
