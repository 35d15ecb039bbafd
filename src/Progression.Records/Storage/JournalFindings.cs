using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What reading a whole journal showed.</summary>
/// <param name="Entries">Good entries.</param>
/// <param name="Cases">Cases among them.</param>
/// <param name="Saves">Number of the last good entry that is not audit; 0 for none.</param>
/// <param name="Last">The last good line; null for none.</param>
/// <param name="Damage">Where and what; empty when all is well.</param>
/// <param name="TornFrom">Where the rest of a save that was cut short begins; null for none.</param>
internal sealed record JournalFindings(
    long Entries, int Cases, long Saves, JournalSlice? Last, ImmutableArray<string> Damage, long? TornFrom);
