using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>
/// Compares the whole journal with itself and with the index. The journal is read as it was at one moment, without the lock, because that takes as long as
/// there are entries; the index is compared under the lock, with what was saved meanwhile.
/// </summary>
/// <param name="progress">Hears how far it is; null for nobody.</param>
internal sealed class StoreVerification(IProgress<WorkDone>? progress)
{
    private readonly Dictionary<(string Code, RecordKind Kind), RevisionStamp> _heads = [];
    private readonly List<(string Code, RecordKind Kind, int Revision, JournalPlace Place)> _places = [];
    private readonly List<string> _differences = [];
    private JournalFindings? _findings;
    private long _read;

    /// <summary>Reads every line, and checks hashes and chains.</summary>
    public void Read(JournalCopy copy) => (_findings, _read) = (copy.Findings("checking every entry", progress, Take), copy.Length);

    /// <summary>Compares the index; null when the journal is no longer the one that was read, as after a restore.</summary>
    public VerifyReport? Against(StoreSession session)
    {
        JournalSlice? last = _findings!.Last;
        if (session.Journal.Length < _read || (last is not null && session.Journal.ReadAt(last.Place, out _)?.Hash != last.Line!.Hash))
        {
            return null;
        }

        long entries = _places.Count;
        foreach (JournalSlice slice in session.Journal.Slices(_read))
        {
            if (slice.Line is null || slice.Line.Entry.PreviousLine != last?.Line!.Hash)
            {
                return null;
            }

            Take(slice);
            (last, entries) = (slice, entries + 1);
        }

        Compare(session.Index, entries);
        return new VerifyReport(entries, CaseCount, last?.Line!.Hash, [.. _findings.Damage, .. _differences])
        {
            Gaps = _findings.Gaps.Select(gap => gap.Text).ToImmutableArray(),
        };
    }

    private int CaseCount => _heads.Keys.Select(key => key.Code).Where(code => code != AuditChain.Code).Distinct(StringComparer.Ordinal).Count();

    private void Take(JournalSlice slice)
    {
        RevisionStamp stamp = slice.Line!.Entry.Stamp;
        _heads[(stamp.CaseCode, stamp.Kind)] = stamp;
        _places.Add((stamp.CaseCode, stamp.Kind, stamp.Revision, slice.Place));
    }

    private void Compare(RevisionIndex index, long entries)
    {
        _differences.AddRange(_places.Where(one => index.PlaceOf(one.Code, one.Kind, one.Revision) != one.Place)
            .Select(one => $"index: revision {one.Revision} of {one.Kind.Word()} '{one.Code}' is not where it should be"));
        if (index.Count() != entries)
        {
            _differences.Add($"index: it holds {index.Count()} revisions, the journal {entries}");
        }

        if (index.State is not { } state || state.Cases != CaseCount || state.Entries != entries)
        {
            _differences.Add("index: it has counted otherwise");
        }

        IReadOnlyList<IndexedCase> cases = index.All();
        ImmutableHashSet<RevisionStamp> indexed = [.. cases.SelectMany(row => row.Chains).Select(chain => chain.Stamp)];
        _differences.AddRange(_heads.Values.Where(head => !indexed.Contains(head))
            .Select(head => $"index: revision {head.Revision} of {head.Kind.Word()} '{head.CaseCode}' is not shown as the newest"));
        CaseRow[] rows = [.. cases.Where(RevisionIndex.IsListed).Select(one => one.ToRow())];
        HashSet<string> listed = [.. index.List(Text)];
        _differences.AddRange(rows.Where(row => !listed.Contains(Text(row))).Select(row => $"index: '{row.CaseCode}' is listed otherwise than it is"));
        if (!index.Waiting(Text).ToHashSet().SetEquals(rows.Where(row => row.Fields.ContainsKey(CaseRow.Waiting)).Select(Text)))
        {
            _differences.Add("index: those who wait for a review are others than it says");
        }
    }

    private static string Text(CaseRow row) => $"{row.CaseCode} {string.Join(",", row.Heads)} {string.Join(",", row.Fields)}";
}
