using System.Collections.Immutable;
using System.Text.Json;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <summary>The port again, as simply as it can be written: a list. What the contract says must hold for both.</summary>
internal sealed class InMemoryPlanStore(IndexFields fields) : IPlanStore
{
    private readonly List<JournalEntry> _entries = [];

    public CaseView? Load(string caseCode) => Heads(caseCode) is { Count: > 0 } heads
        ? new CaseView(caseCode, [.. heads.Select(entry => new StoredRevision(entry.Stamp, entry.Body))], [])
        : null;

    public CasePage List(CaseQuery query) => query.PageOf(List(row => row).Cases);

    public CaseList<T> List<T>(Func<CaseRow, T> of) => new(Generation(), [.. _entries.Select(entry => entry.Stamp.CaseCode).Distinct().Where(code => code != AuditChain.Code).Select(code => of(new CaseRow(
        code,
        [.. Heads(code).Select(entry => CaseHead.Of(entry.Stamp))],
        FieldCollection.Of(Heads(code).Aggregate(ImmutableSortedDictionary<string, string>.Empty, (all, entry) => all.SetItems(FieldsOf(entry)))))))]);

    public CaseList<T> Waiting<T>(Func<CaseRow, T> of) =>
        new(Generation(), [.. List(row => row).Cases.Where(row => row.Fields.ContainsKey(CaseRow.Waiting)).Select(of)]);

    public AppendResult Append(Submission submission)
    {
        if (SubmissionCheck.Read(submission, out string problem) is not { } ready)
        {
            return new AppendResult.Refused(problem);
        }

        List<RevisionStamp> wanted = [.. ready.Drafts
            .Select(draft => draft.Kind == RecordKind.Audit ? draft with { BasedOn = Head(ready.CaseCode, RecordKind.Audit)?.Reference } : draft)
            .Select(draft => StampFor(ready, draft))];
        List<RevisionStamp> there = [.. wanted.Select(stamp => _entries.FirstOrDefault(entry => entry.Stamp == stamp with { At = entry.Stamp.At })?.Stamp).OfType<RevisionStamp>()];
        if (there.Count == wanted.Count)
        {
            return new AppendResult.Saved([.. there]);
        }

        List<RecordKind> stale =
        [
            .. ready.Drafts.Where(draft => draft.Kind != RecordKind.Audit && Head(ready.CaseCode, draft.Kind)?.Reference != draft.BasedOn).Select(draft => draft.Kind),
            .. ready.Requires.Where(one => Head(ready.CaseCode, one.Kind)?.Reference != one.Revision).Select(one => one.Kind),
        ];
        if (stale.Count > 0)
        {
            return new AppendResult.Conflict([.. stale.Select(kind => Head(ready.CaseCode, kind)).OfType<RevisionStamp>()]);
        }

        for (int index = 0; index < wanted.Count; index++)
        {
            string? previous = _entries.Count == 0 ? null : JournalLine.HashOf(_entries[^1]);
            _entries.Add(new(_entries.Count + 1, wanted[index], index + 1, wanted.Count, ready.Drafts[index].Body, previous));
        }

        return new AppendResult.Saved([.. wanted]);
    }

    public IReadOnlyList<RevisionStamp> History(string caseCode, RecordKind kind) =>
        [.. _entries.Select(entry => entry.Stamp).Where(stamp => stamp.CaseCode == caseCode && stamp.Kind == kind)];

    public StoredRevision? Read(string caseCode, RecordKind kind, int revision) => _entries
        .Where(entry => entry.Stamp.CaseCode == caseCode && entry.Stamp.Kind == kind && entry.Stamp.Revision == revision)
        .Select(entry => new StoredRevision(entry.Stamp, entry.Body)).FirstOrDefault();

    public long Generation() => _entries.LastOrDefault(entry => entry.Stamp.Kind != RecordKind.Audit)?.Sequence ?? 0;

    public bool HasChangedSince(long generation) => Generation() != generation;

    public StoreStatus Status() => new(
        List(row => row).Cases.Length, _entries.Count, _entries.Count, _entries.Sum(entry => (long)JournalLine.Write(entry).Length), HeadHash, []);

    public JournalReading Walk(Func<StoredEntry, bool> take, IProgress<WorkDone>? progress = null)
    {
        JournalEntry[] there = [.. _entries];
        int count = 0;
        while (count < there.Length && take(StoredEntry.Of(new(there[count], JournalLine.HashOf(there[count++])))))
        {
        }

        return new(count, count, count == 0 ? null : JournalLine.HashOf(there[count - 1]), []);
    }

    public VerifyReport Verify() => new(
        _entries.Count, List(row => row).Cases.Length, HeadHash, []);

    public RebuildReport Rebuild() => new(_entries.Count, [], 0);

    public JournalReading Export(Stream target, long after = 0, IProgress<WorkDone>? progress = null)
    {
        List<JournalEntry> wanted = [.. _entries.Where(entry => entry.Sequence > after)];
        wanted.ForEach(entry => target.Write(JournalLine.Write(entry)));
        return new(wanted.Count, _entries.Count, HeadHash, []);
    }

    public ImportReport Import(Stream source)
    {
        List<JournalSlice> slices = [.. JournalSlice.Of(source)];
        List<JournalEntry> fresh = [.. slices.Select(slice => slice.Line?.Entry).OfType<JournalEntry>().Where(entry => entry.Sequence > _entries.Count)];
        List<JournalEntry> old = [.. slices.Select(slice => slice.Line?.Entry).OfType<JournalEntry>().Where(entry => entry.Sequence <= _entries.Count)];
        JournalFindings findings = JournalAudit.Run(_entries.Concat(fresh).Select(entry => JournalSlice.Of(entry, 0)), null, _ => { });
        if (slices.Any(slice => slice.Line is null) || old.Any(entry => _entries[(int)entry.Sequence - 1] != entry)
            || !findings.Damage.IsEmpty || findings.TornFrom is not null)
        {
            return new ImportReport(0, old.Count, "These lines do not continue this store.");
        }

        _entries.AddRange(fresh);
        return new ImportReport(fresh.Count, old.Count, null);
    }

    private static RevisionStamp StampFor(Submission submission, Draft draft)
    {
        int revision = (draft.BasedOn?.Revision ?? 0) + 1;
        string hash = JournalEntry.HashOf(submission.CaseCode, draft.Kind, new(revision, draft.BasedOn?.Hash ?? ""), draft.Body);
        return new(submission.CaseCode, draft.Kind, revision, hash, draft.BasedOn?.Hash, submission.By, submission.At);
    }

    private string? HeadHash => _entries.Count == 0 ? null : JournalLine.HashOf(_entries[^1]);

    private RevisionStamp? Head(string caseCode, RecordKind kind) => History(caseCode, kind) is [.., var last] ? last : null;

    private List<JournalEntry> Heads(string caseCode) =>
        [.. _entries.Where(entry => entry.Stamp.CaseCode == caseCode).GroupBy(entry => entry.Stamp.Kind).OrderBy(chain => chain.Key).Select(chain => chain.Last())];

    private IReadOnlyDictionary<string, string> FieldsOf(JournalEntry entry)
    {
        using JsonDocument body = JsonDocument.Parse(entry.Body);
        return fields(entry.Stamp.Kind, body.RootElement);
    }
}
