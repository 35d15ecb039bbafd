using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>The outcome of a backup that is whole and on disk.</summary>
/// <param name="Entries">Entries in it.</param>
/// <param name="Last">Number of its last entry; 0 for none.</param>
/// <param name="HeadHash">Hash of that entry; null for none.</param>
/// <param name="Bytes">Its length.</param>
/// <param name="Sha256">Hash of the file, as it stands beside it in a file of its own.</param>
/// <param name="Gaps">Where entries are missing and a repair wrote that down.</param>
public sealed record BackupReport(long Entries, long Last, string? HeadHash, long Bytes, string Sha256, ImmutableArray<string> Gaps);
