using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>The outcome of a repair.</summary>
/// <param name="Damage">What was damaged; empty when nothing was, and nothing was done.</param>
/// <param name="LinesAside">Damaged lines that were moved out of the journal.</param>
/// <param name="Entries">Entries that are whole and stay, the one about the repair included.</param>
/// <param name="SetAside">The folder with the files as they were; null when nothing was done.</param>
public sealed record RepairReport(ImmutableArray<string> Damage, int LinesAside, long Entries, string? SetAside);
