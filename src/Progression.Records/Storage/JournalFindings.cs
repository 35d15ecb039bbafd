using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>What reading a whole journal showed.</summary>
/// <param name="Entries">Good entries.</param>
/// <param name="Cases">Cases among them.</param>
/// <param name="Saves">Number of the last good entry that is not audit; 0 for none.</param>
/// <param name="Last">The last good line; null for none.</param>
/// <param name="Breaks">Damage; empty when all is well.</param>
/// <param name="TornFrom">Where the rest of a save that was cut short begins; null for none.</param>
internal sealed record JournalFindings(
    long Entries, int Cases, long Saves, JournalSlice? Last, ImmutableArray<JournalBreak> Breaks, long? TornFrom)
{
    /// <summary>Breaks that a repair wrote down: what is missing there is known to be missing, and stops nothing.</summary>
    public ImmutableArray<JournalBreak> Gaps { get; init; } = [];

    /// <summary>Where and what; empty when all is well.</summary>
    public ImmutableArray<string> Damage => Breaks.Select(one => one.Text).ToImmutableArray();
}

/// <summary>A place where a journal is damaged or does not go on from what stands before.</summary>
/// <param name="LineHash">Hash of the line there; null where it is not whole.</param>
/// <param name="Text">Where and what.</param>
internal sealed record JournalBreak(string? LineHash, string Text);
