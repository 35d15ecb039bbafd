using System.Collections.Immutable;
using System.Text.Json;

namespace Progression.Records.Storage;

/// <summary>A case as the index keeps it: the newest stamp of each kind with the fields taken from that revision.</summary>
internal sealed record IndexedCase(string CaseCode, ImmutableArray<IndexedCase.Chain> Chains)
{
    /// <summary>The newest revision of one kind.</summary>
    internal sealed record Chain(RevisionStamp Stamp, ImmutableSortedDictionary<string, string> Fields)
    {
        /// <summary>Earlier revisions that the journal does not have; null for none.</summary>
        public IReadOnlyList<int>? Missing { get; init; }
    }

    public string ToJson() => JsonSerializer.Serialize(this, IndexedCaseJson.Default.IndexedCase);

    public static IndexedCase FromJson(string json) => JsonSerializer.Deserialize(json, IndexedCaseJson.Default.IndexedCase)!;

    public RevisionStamp? Head(RecordKind kind) => Chains.FirstOrDefault(chain => chain.Stamp.Kind == kind)?.Stamp;

    /// <summary>Whether the journal has a revision.</summary>
    public bool Has(RecordKind kind, int revision) => Chains.FirstOrDefault(chain => chain.Stamp.Kind == kind) is { } chain
        && revision >= 1 && revision <= chain.Stamp.Revision && chain.Missing?.Contains(revision) != true;

    public IndexedCase With(Chain newest)
    {
        Chain? before = Chains.FirstOrDefault(chain => chain.Stamp.Kind == newest.Stamp.Kind);
        int next = (before?.Stamp.Revision ?? 0) + 1;
        int[] missing = [.. before?.Missing ?? [], .. Enumerable.Range(next, Math.Max(0, newest.Stamp.Revision - next))];
        Chain chain = missing.Length == 0 ? newest : newest with { Missing = missing };
        return this with { Chains = [.. Chains.Where(one => one != before).Append(chain).OrderBy(one => one.Stamp.Kind)] };
    }

    public CaseRow ToRow() => new(
        CaseCode,
        [.. Chains.Select(chain => CaseHead.Of(chain.Stamp))],
        FieldCollection.Of(Chains.Aggregate(
            ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal),
            (fields, chain) => fields.SetItems(chain.Fields))));
}
