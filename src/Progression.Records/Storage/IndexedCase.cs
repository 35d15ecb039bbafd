using System.Collections.Immutable;
using System.Text.Json;

namespace Progression.Records.Storage;

/// <summary>A case as the index keeps it: the newest stamp of each kind with the fields taken from that revision.</summary>
internal sealed record IndexedCase(string CaseCode, ImmutableArray<IndexedCase.Chain> Chains)
{
    /// <summary>The newest revision of one kind.</summary>
    internal sealed record Chain(RevisionStamp Stamp, ImmutableSortedDictionary<string, string> Fields);

    public string ToJson() => JsonSerializer.Serialize(this, IndexedCaseJson.Default.IndexedCase);

    public static IndexedCase FromJson(string json) => JsonSerializer.Deserialize(json, IndexedCaseJson.Default.IndexedCase)!;

    public RevisionStamp? Head(RecordKind kind) => Chains.FirstOrDefault(chain => chain.Stamp.Kind == kind)?.Stamp;

    public IndexedCase With(Chain newest) => this with
    {
        Chains = [.. Chains.Where(chain => chain.Stamp.Kind != newest.Stamp.Kind).Append(newest).OrderBy(chain => chain.Stamp.Kind)],
    };

    public CaseRow ToRow() => new(
        CaseCode,
        [.. Chains.Select(chain => CaseHead.Of(chain.Stamp))],
        FieldCollection.Of(Chains.Aggregate(
            ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal),
            (fields, chain) => fields.SetItems(chain.Fields))));
}
