namespace Progression.Records.Storage;

/// <summary>
/// Makes a new journal from a file and from what the present journal has that goes on from the file's last entry. So a journal damaged before the backup's
/// end is cured without losing what was saved after the backup.
/// </summary>
/// <param name="folder">The store, locked for writing.</param>
/// <param name="progress">Hears how far it is; null for nobody.</param>
internal sealed class StoreRestore(StoreFolder folder, IProgress<WorkDone>? progress)
{
    private readonly HashSet<string> _known = [];
    private readonly List<JournalSlice> _pending = [];
    private JournalSlice? _head;
    private JournalSlice? _firstLeftOut;
    private JournalSlice? _lastLeftOut;
    private long _takenOver;
    private long _leftOut;

    /// <summary>Restores, or says why not.</summary>
    /// <param name="source">The file's content.</param>
    /// <param name="dropNewer">How many entries of the present journal may be left out; null for none.</param>
    /// <param name="at">When.</param>
    public RestoreReport From(Stream source, long? dropNewer, DateTimeOffset at)
    {
        using JournalSwap swap = new(folder);
        Copy(source, swap);
        JournalFindings file = swap.Findings(progress, slice => _known.Add(slice.Line!.Hash));
        if (!file.Damage.IsEmpty || file.Entries == 0)
        {
            string why = file.Entries == 0 && file.Damage.IsEmpty ? "it is empty" : file.Damage[0];
            return Nothing(file.Entries, $"The file is not a whole copy of records, and nothing was changed: {why}.");
        }

        _head = file.Last;
        TakeOver(swap);
        if (_leftOut != (dropNewer ?? 0))
        {
            return Nothing(file.Entries, Question(dropNewer));
        }

        return swap.Findings(progress) is { Damage: [var broken, ..] }
            ? Nothing(file.Entries, $"What is newer here does not fit the file, and nothing was changed: {broken}.")
            : new RestoreReport(file.Entries, _takenOver, _leftOut, swap.Commit(at), null);
    }

    private void Copy(Stream source, JournalSwap swap)
    {
        byte[] buffer = new byte[1024 * 1024];
        for (int read; (read = source.Read(buffer)) > 0;)
        {
            swap.Add(buffer.AsSpan(0, read));
            progress?.Report(new("copying the file", swap.Length, source.CanSeek ? source.Length : 0));
        }
    }

    private void TakeOver(JournalSwap swap)
    {
        if (!File.Exists(folder.Journal))
        {
            return;
        }

        using RevisionJournal present = new(folder.Open(folder.Journal));
        _ = JournalAudit.Run(present.Slices(), null, slice =>
        {
            if (!_known.Contains(slice.Line!.Hash))
            {
                Take(slice, swap);
            }
        });
        _pending.ForEach(LeaveOut);
    }

    // A submission is taken whole or not at all, and only where it goes on from what is there.
    private void Take(JournalSlice slice, JournalSwap swap)
    {
        JournalSlice? before = _pending.Count > 0 ? _pending[^1] : _head;
        JournalEntry entry = slice.Line!.Entry;
        if (entry.PreviousLine != before?.Line!.Hash || entry.Part != _pending.Count + 1)
        {
            _pending.ForEach(LeaveOut);
            _pending.Clear();
            LeaveOut(slice);
            return;
        }

        _pending.Add(slice);
        if (entry.EndsSubmission)
        {
            _pending.ForEach(one => swap.Add(JournalLine.Write(one.Line!.Entry)));
            (_head, _takenOver) = (slice, _takenOver + _pending.Count);
            _pending.Clear();
        }
    }

    private void LeaveOut(JournalSlice slice)
    {
        _firstLeftOut ??= slice;
        (_lastLeftOut, _leftOut) = (slice, _leftOut + 1);
    }

    private RestoreReport Nothing(long entries, string why) => new(entries, 0, _leftOut, null, why);

    private string Question(long? dropNewer) => _leftOut == 0
        ? FormattableString.Invariant($"Nothing of the records here would be left out, and {dropNewer} entries were named; nothing was changed.")
        : FormattableString.Invariant(
            $"The records here hold {_leftOut} whole entries, numbers {Number(_firstLeftOut)} to {Number(_lastLeftOut)}, the last by {_lastLeftOut!.Line!.Entry.Stamp.By.Name} on {_lastLeftOut.Line.Entry.Stamp.At:yyyy-MM-dd HH:mm} UTC, that are not in the file and do not go on from it. Nothing was changed. To leave them out, in a folder aside, agree to the exact number: --drop-newer {_leftOut}.");

    private static long? Number(JournalSlice? slice) => slice?.Line!.Entry.Sequence;
}
