namespace Progression.Records.Storage;

/// <summary>The outcome of taking in journal entries: all that were missing, or none.</summary>
/// <param name="Added">Entries added.</param>
/// <param name="AlreadyHere">Entries that were here already, the same.</param>
/// <param name="Problem">Why nothing was added; null when all went well.</param>
public sealed record ImportReport(long Added, long AlreadyHere, string? Problem);
