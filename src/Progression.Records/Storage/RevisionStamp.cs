namespace Progression.Records.Storage;

/// <summary>Everything about a stored revision but its body.</summary>
/// <param name="CaseCode">The case.</param>
/// <param name="Kind">Which chain of the case.</param>
/// <param name="Revision">From 1, without gaps.</param>
/// <param name="Hash">SHA-256 over case, kind, revision, previous hash and body.</param>
/// <param name="PreviousHash">Hash of the revision before; null for the first.</param>
/// <param name="By">Who saved it.</param>
/// <param name="At">When, UTC, to the millisecond.</param>
public sealed record RevisionStamp(
    string CaseCode, RecordKind Kind, int Revision, string Hash, string? PreviousHash, Actor By, DateTimeOffset At)
{
    /// <summary>The name to base the next draft on.</summary>
    public RevisionRef Reference => new(Revision, Hash);
}
