using System.Collections.Immutable;

namespace Progression.Records.Storage;

/// <summary>The outcome of reading the whole journal and comparing the index with it.</summary>
/// <param name="Entries">Entries that are whole.</param>
/// <param name="Cases">Cases among them.</param>
/// <param name="TailHash">Hash of the last entry, which stands for the whole journal; null when it is empty.</param>
/// <param name="Problems">What is wrong; empty when nothing is.</param>
public sealed record VerifyReport(long Entries, int Cases, string? TailHash, ImmutableArray<string> Problems)
{
    /// <summary>Where entries are missing and a repair wrote that down; empty when none are. They stop nothing.</summary>
    public ImmutableArray<string> Gaps { get; init; } = [];

    /// <summary>True when nothing is wrong.</summary>
    public bool IsSound => Problems.IsEmpty;
}
