using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>Compares the whole journal with itself and with the index.</summary>
internal static class StoreVerification
{
    private const int ReportEvery = 100;

    /// <summary>Reads every line, checks hashes and chains, and looks every revision and every case up in the index.</summary>
    public static VerifyReport Of(StoreSession session, IProgress<WorkDone>? progress)
    {
        int read = 0;
        Dictionary<(string, RecordKind), RevisionStamp> heads = [];
        List<string> differences = [];
        JournalFindings findings = JournalAudit.Run(session.Journal.Slices(), session.Mark.Length, slice =>
        {
            if (++read % ReportEvery == 0)
            {
                progress?.Report(new("checking every entry", slice.Place.End, session.Mark.Length));
            }

            RevisionStamp stamp = slice.Line!.Entry.Stamp;
            heads[(stamp.CaseCode, stamp.Kind)] = stamp;
            if (session.Index.PlaceOf(stamp.CaseCode, stamp.Kind, stamp.Revision) != slice.Place)
            {
                differences.Add($"index: revision {stamp.Revision} of {stamp.Kind.Word()} '{stamp.CaseCode}' is not where it should be");
            }
        });

        if (session.Index.Count() != findings.Entries)
        {
            differences.Add($"index: it holds {session.Index.Count()} revisions, the journal {findings.Entries}");
        }

        IReadOnlyList<IndexedCase> cases = session.Index.All();
        ImmutableHashSet<RevisionStamp> indexed = [.. cases.SelectMany(row => row.Chains).Select(chain => chain.Stamp)];
        differences.AddRange(heads.Values.Where(head => !indexed.Contains(head)).Select(head =>
            $"index: revision {head.Revision} of {head.Kind.Word()} '{head.CaseCode}' is not shown as the newest"));
        ImmutableHashSet<string> listed = [.. session.Index.List(Text)];
        differences.AddRange(cases.Where(RevisionIndex.IsListed).Select(one => one.ToRow()).Where(row => !listed.Contains(Text(row))).Select(row => $"index: '{row.CaseCode}' is listed otherwise than it is"));
        ImmutableHashSet<string> waiting = [.. session.Index.Waiting(Text)];
        if (!waiting.SetEquals(cases.Where(RevisionIndex.IsListed).Select(one => one.ToRow()).Where(row => row.Fields.ContainsKey(CaseRow.Waiting)).Select(Text)))
        {
            differences.Add("index: those who wait for a review are others than it says");
        }

        if (session.Index.State is not { } state || state.Cases != findings.Cases || state.Entries != findings.Entries)
        {
            differences.Add("index: it has counted otherwise");
        }

        return new VerifyReport(findings.Entries, findings.Cases, findings.Last?.Line!.Hash, [.. findings.Damage, .. differences])
        {
            Gaps = findings.Gaps.Select(gap => gap.Text).ToImmutableArray(),
        };
    }

    private static string Text(CaseRow row) => $"{row.CaseCode} {string.Join(",", row.Heads)} {string.Join(",", row.Fields)}";
}
