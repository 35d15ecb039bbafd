using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <content>Making the index again from the journal.</content>
internal sealed partial class StoreSession
{
    private const int BatchSize = 500;
    private const int ReportEvery = 100;

    private RebuildReport RepairOrClose(string doubt)
    {
        try
        {
            return Repair(doubt);
        }
        catch (Exception error)
        {
            Dispose();
            if (error is IOException or UnauthorizedAccessException)
            {
                throw StoreFolder.Failure(error, "repair the store");
            }

            throw;
        }
    }

    private RebuildReport Repair(string doubt)
    {
        IndexMark? old = ReadMark();
        if (Journal.Length == 0 && old is { Length: > 0 })
        {
            throw new StoreException(StoreFault.Corrupt, FormattableString.Invariant(
                $"The journal '{_folder.Journal}' is missing or empty, although {old.Last} entries had been saved. Put it back from a backup."));
        }

        bool isNew = Journal.Length == 0 && RandomAccess.GetLength(_indexFile) == 0;
        JournalFindings findings = FillIndex(old);
        long torn = findings.TornFrom is { } from ? CutTail(from) : 0;
        Damage = findings.Damage;
        IndexMark mark = IndexMark.After(findings.Last, findings.Saves, Journal.Length, _options.FieldsVersion);
        try
        {
            Finish([], FieldsOf, mark);
        }
        catch (IndexDoubtException full) when (!_isInMemory && full.IsFullDisk)
        {
            StartIndex(inMemory: true);
            _ = FillStartedIndex(old);
            Finish([], FieldsOf, mark);
        }

        Tell(isNew ? "" : doubt, old, findings);
        return new RebuildReport(findings.Entries, findings.Damage, torn);
    }

    // On a full disk the index is made in memory, for this call only: reading must go on.
    private JournalFindings FillIndex(IndexMark? old)
    {
        try
        {
            StartIndex(_folder.FreeBytes() < _options.MinimumFreeBytes);
            return FillStartedIndex(old);
        }
        catch (IndexDoubtException doubt) when (!_isInMemory && doubt.IsFullDisk)
        {
            StartIndex(inMemory: true);
            return FillStartedIndex(old);
        }
    }

    private void StartIndex(bool inMemory)
    {
        _index?.Dispose();
        _index = null;
        _isInMemory = inMemory;
        if (!inMemory)
        {
            RandomAccess.SetLength(_markFile, 0);
            RandomAccess.FlushToDisk(_markFile);
            RandomAccess.SetLength(_indexFile, 0);
        }

        _index = RevisionIndex.Open(inMemory ? new MemoryStream() : new StoreStream(_indexFile, writable: true));
    }

    private JournalFindings FillStartedIndex(IndexMark? old)
    {
        List<JournalSlice> batch = [];
        long? confirmed = old is not null && old.Length <= Journal.Length ? old.Length : null;
        long total = Journal.Length;
        JournalFindings findings = JournalAudit.Run(Journal.Slices(), confirmed, slice =>
        {
            batch.Add(slice);
            if (batch.Count % ReportEvery == 0)
            {
                _options.Progress?.Report(new("making the index again from the journal", slice.Place.End, total));
            }

            if (batch.Count == BatchSize)
            {
                Flush();
            }
        });
        Flush();
        return findings;

        void Flush()
        {
            Index.Add(batch, FieldsOrNone, "unfinished", []);
            batch.Clear();
        }
    }

    // An old body that the fields cannot be taken from must not make a whole store unreadable.
    private ImmutableSortedDictionary<string, string> FieldsOrNone(JournalEntry entry)
    {
        try
        {
            return FieldsOf(entry);
        }
        catch (Exception error) when (error is StoreException or JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            return ImmutableSortedDictionary<string, string>.Empty;
        }
    }

    private long CutTail(long from)
    {
        using SafeFileHandle aside = _folder.Open(_folder.Torn);
        long bytes = Journal.MoveTail(from, aside);
        _notices.Add(new(StoreNoticeKind.TornTailCut, FormattableString.Invariant(
            $"A save that was cut short ({bytes} bytes) was moved from the journal to '{_folder.Torn}'. It had not been confirmed as saved.")));
        return bytes;
    }

    private void Tell(string doubt, IndexMark? old, JournalFindings findings)
    {
        if (doubt.Length > 0)
        {
            _notices.Add(new(StoreNoticeKind.IndexRebuilt, FormattableString.Invariant(
                $"The index was made again from the journal's {findings.Entries} entries: {doubt}.")));
        }

        long last = findings.Last?.Line!.Entry.Sequence ?? 0;
        if (old is not null && old.Last > last)
        {
            _notices.Add(new(StoreNoticeKind.EntriesLost, FormattableString.Invariant(
                $"Entries {last + 1} to {old.Last} had been saved and are no longer in the journal. Compare with a backup.")));
        }

        foreach (string damage in findings.Damage)
        {
            _notices.Add(new(StoreNoticeKind.JournalDamaged, $"Damage in the {damage}."));
        }
    }
}
