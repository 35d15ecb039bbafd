using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>How much a store holds and what is known of its state; nothing is read through for it.</summary>
/// <param name="Cases">Cases.</param>
/// <param name="Entries">Whole entries, audit included.</param>
/// <param name="Last">Number of the last whole entry; more than <paramref name="Entries"/> when some are missing. 0 for none.</param>
/// <param name="Bytes">Length of the record, without what is derived from it.</param>
/// <param name="HeadHash">Hash of the last entry, which stands for everything before it; null for none.</param>
/// <param name="Damage">Known damage; empty when none is known. Only <see cref="IPlanStore.Verify"/> looks for it.</param>
public sealed record StoreStatus(int Cases, long Entries, long Last, long Bytes, string? HeadHash, ImmutableArray<string> Damage);
