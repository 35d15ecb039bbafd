using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Measures;

/// <summary>How the measuring differed between two visits. What was stated at one visit only is not taken for a difference.</summary>
/// <param name="Raters">Both raters where they differ, each "KL, then MB".</param>
/// <param name="Devices">Both devices where they differ.</param>
/// <param name="Positions">Both positions where they differ.</param>
/// <param name="Stairs">Why the two cannot be compared on stairs; null when they can.</param>
internal sealed record Circumstances(ImmutableArray<string> Raters, ImmutableArray<string> Devices, ImmutableArray<string> Positions, string? Stairs)
{
    /// <summary>Whether rater, device or position changed.</summary>
    internal bool Differ => Raters.Length + Devices.Length + Positions.Length > 0;

    /// <summary>Every difference in words: "rater KL, then MB".</summary>
    internal IEnumerable<string> Words =>
        [.. Raters.Select(text => $"rater {text}"), .. Devices.Select(text => $"device {text}"), .. Positions.Select(text => $"position {text}")];

    internal static Circumstances Of(KneeState old, KneeState now, Measure measure)
    {
        ImmutableArray<(Reading Old, Reading New)> pairs =
        [
            .. from before in old.Behind(measure.Id)
               join after in now.Behind(measure.Id) on before.Measure equals after.Measure
               select (before, after),
        ];
        return new Circumstances(
            Changed(pairs, reading => reading.Rater, old.Assessment.Rater, now.Assessment.Rater),
            Changed(pairs, reading => reading.Device, null, null),
            Changed(pairs, reading => reading.Position, null, null),
            measure.SameStairs ? pairs.Select(pair => OnStairs(pair.Old.Steps, pair.New.Steps)).FirstOrDefault() : null);
    }

    private static ImmutableArray<string> Changed(ImmutableArray<(Reading Old, Reading New)> pairs, Func<Reading, string?> stated, string? oldElse, string? newElse) =>
    [
        .. from pair in pairs
           let before = (stated(pair.Old) ?? oldElse)?.Trim()
           let after = (stated(pair.New) ?? newElse)?.Trim()
           where before is not null && after is not null && !string.Equals(before, after, StringComparison.OrdinalIgnoreCase)
           group pair by $"{before}, then {after}" into same
           select same.Key,
    ];

    private static string? OnStairs(int? old, int? now) => old == now
        ? null
        : $"the stairs differ ({Steps(old)}, then {Steps(now)}): only the same stairs can be compared";

    private static string Steps(int? steps) => steps is int count ? string.Create(CultureInfo.InvariantCulture, $"{count} steps") : "number of steps not stated";
}
