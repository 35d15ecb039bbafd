using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>The outcome of making the index again.</summary>
/// <param name="Entries">Entries now in the index.</param>
/// <param name="Damage">Lines of the journal that could not be read; empty when none.</param>
/// <param name="TornBytes">Bytes of an unfinished save moved out of the journal; 0 when none.</param>
public sealed record RebuildReport(long Entries, ImmutableArray<string> Damage, long TornBytes);
