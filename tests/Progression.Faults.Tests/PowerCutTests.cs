using Progression.Records.Storage;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>
/// Fault: the power goes. What was written and not yet flushed may be on the disk or not, in any order and by halves; that is simulated from the calls of a
/// real process. It is not a real power cut: a disk that lies about flushing is not in it.
/// </summary>
public sealed class PowerCutTests : IDisposable
{
    private const int Saves = 15;
    private const int Sector = 512;
    private readonly StoreCopy _base = new();

    [Fact]
    public async Task Whatever_was_not_flushed_every_confirmed_save_is_there_afterwards()
    {
        Sample.SaveRevisions(_base.Store, "K-1", 3);
        using StoreCopy recorded = _base.Twin();
        IReadOnlyList<DiskCall>? calls = await RecordedCalls.Of(recorded.File(""), "append", recorded.File(""), "K-1", "writer", $"{Saves}");
        Assert.SkipWhen(calls is null, "There is no strace, or it is not allowed here.");
        Assert.Equal(Saves, calls!.OfType<DiskCall.Said>().Count());
        Assert.True(calls.OfType<DiskCall.Flushed>().Count() >= 2 * Saves);

        Random random = new(20260302);
        int states = 0;
        for (int cut = 0; cut <= calls.Count; cut++)
        {
            DiskCall[] before = [.. calls.Take(cut)];
            DiskCall.Change[] unsure = [.. Unsure(before)];
            for (int variant = 0; variant < (unsure.Length == 0 ? 1 : 5); variant++, states++)
            {
                HashSet<DiskCall.Change> landed = [.. unsure.Where(_ => variant == 0 || (variant > 1 && random.Next(2) == 0))];
                Check(before, landed.Count == unsure.Length ? [] : [.. unsure.Except(landed)], variant == 4 ? random : null);
            }
        }

        Figures.Print($"{calls.Count} calls of {Saves} saves, {states} states of the disk after a power cut: every confirmed save there each time, every store sound");
    }

    public void Dispose() => _base.Dispose();

    private static IEnumerable<DiskCall.Change> Unsure(DiskCall[] calls) => calls.Select((call, at) => (call, at))
        .Where(one => one.call is DiskCall.Change change && !calls.Skip(one.at).Any(later => later is DiskCall.Flushed flushed && flushed.File == change.File))
        .Select(one => (DiskCall.Change)one.call);

    private void Check(DiskCall[] calls, HashSet<DiskCall.Change> lost, Random? halves)
    {
        using StoreCopy after = _base.Twin();
        foreach (DiskCall.Change change in calls.OfType<DiskCall.Change>())
        {
            using FileStream file = new(after.File(change.File), FileMode.OpenOrCreate);
            bool isHalf = lost.Contains(change) && halves is not null && change is DiskCall.Write { Data.Length: > Sector };
            if (change is DiskCall.Write write && (isHalf || !lost.Contains(change)))
            {
                int length = isHalf ? Sector * halves!.Next(1, (write.Data.Length / Sector) + 1) : write.Data.Length;
                file.Position = write.Offset;
                file.Write(write.Data, 0, Math.Min(length, write.Data.Length));
            }
            else if (change is DiskCall.Length cut && !lost.Contains(change))
            {
                file.SetLength(cut.Bytes);
            }
        }

        HashSet<string> kept = [.. after.Store.History("K-1", RecordKind.Plan).Select(stamp => $"saved {stamp.Revision} {stamp.Hash}")];
        Assert.All(calls.OfType<DiskCall.Said>(), said => Assert.Contains(said.Text, kept));
        Assert.Empty(after.Store.Verify().Problems);
        Assert.DoesNotContain(after.Notices, notice => notice.Kind > StoreNoticeKind.TornTailCut);
    }
}
