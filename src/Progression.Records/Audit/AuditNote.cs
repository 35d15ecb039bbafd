using Progression.Records.Storage;

namespace Progression.Records.Audit;

/// <summary>One entry of the audit chain; who and when stand in its stamp.</summary>
/// <param name="Act">What was done.</param>
/// <param name="CaseCode">With which case; null for the store as a whole.</param>
/// <param name="Kind">With which record of the case; null for the case as a whole.</param>
/// <param name="Revision">With which revision; null where it was not one.</param>
/// <param name="What">Anything else, as words without a person's name or reading; empty for nothing.</param>
public sealed record AuditNote(AuditAct Act, string? CaseCode, RecordKind? Kind = null, RevisionRef? Revision = null, string What = "");
