namespace Progression.Records.Storage;

/// <summary>A revision as it was saved; its hash was checked when it was read.</summary>
/// <param name="Stamp">Which one, by whom, when.</param>
/// <param name="Body">Canonical JSON, brought forward where an older program saved it (<see cref="BodySchemas"/>); the stamp's hash is that of what was saved.</param>
public sealed record StoredRevision(RevisionStamp Stamp, string Body);
