namespace Progression.Records.Storage;

/// <summary>The process that keeps the store locked.</summary>
/// <param name="ProcessId">Its number.</param>
/// <param name="Program">Its name; null when the system does not tell.</param>
/// <param name="UserId">The number of the account it runs as; null when the system does not tell.</param>
public sealed record LockHolder(int ProcessId, string? Program, int? UserId)
{
    /// <summary>As shown to a person: <c>process 4711 (progression, user 1000)</c>.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"process {ProcessId} ({Program ?? "program unknown"}, user {UserId?.ToString("D", null) ?? "unknown"})");
}
