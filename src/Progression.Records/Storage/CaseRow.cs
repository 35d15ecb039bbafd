using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>A case in a list.</summary>
/// <param name="CaseCode">The case.</param>
/// <param name="Heads">The newest revision of each kind, in the order of <see cref="RecordKind"/>.</param>
/// <param name="Fields">What <see cref="IndexFields"/> took from those revisions; where two kinds give one name, the later kind wins.</param>
public sealed record CaseRow(string CaseCode, ImmutableArray<CaseHead> Heads, FieldCollection Fields)
{
    /// <summary>The field that puts a case among those that wait for a review.</summary>
    public const string Waiting = "waiting";
}
