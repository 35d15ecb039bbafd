using Progression.Records.Json;

namespace Progression.Records.Storage;

/// <summary>A body to be saved as the next revision of its chain.</summary>
/// <param name="Kind">Which chain of the case.</param>
/// <param name="BasedOn">The revision that was on screen when the change was made; null when the chain has none yet.</param>
/// <param name="Body">A JSON object. The store writes it in the form of <see cref="CanonicalJson"/>.</param>
public sealed record Draft(RecordKind Kind, RevisionRef? BasedOn, string Body);
