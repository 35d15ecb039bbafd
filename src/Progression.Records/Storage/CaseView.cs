using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>The newest revision of every chain of one case.</summary>
/// <param name="CaseCode">The case.</param>
/// <param name="Heads">One for each kind that has been saved, in the order of <see cref="RecordKind"/>.</param>
/// <param name="Damage">
/// What is known to be damaged in the journal, anywhere; empty when all is well. When it is not empty a newer revision than the
/// one shown may exist, so it has to be shown beside the case.
/// </param>
public sealed record CaseView(string CaseCode, ImmutableArray<StoredRevision> Heads, ImmutableArray<string> Damage)
{
    /// <summary>The newest revision of a chain; null when it has none.</summary>
    public StoredRevision? Head(RecordKind kind) => Heads.FirstOrDefault(head => head.Stamp.Kind == kind);
}
