using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What reading the journal from its beginning came to.</summary>
/// <param name="Entries">Whole entries that were read; of an export, those that were written.</param>
/// <param name="Last">Number of the last whole entry that was read; 0 for none.</param>
/// <param name="HeadHash">Hash of that entry, which stands for everything before it; null for none.</param>
/// <param name="Damage">Where a line is damaged or does not follow the one before; empty when all that was read is whole.</param>
public sealed record JournalReading(long Entries, long Last, string? HeadHash, ImmutableArray<string> Damage)
{
    /// <summary>Where entries are missing and a repair wrote that down; empty when none are.</summary>
    public ImmutableArray<string> Gaps { get; init; } = [];
}
