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
    private static readonly Circumstances None = new([], [], [], null);

    /// <summary>Whether rater, device or position changed.</summary>
    internal bool Differ => Raters.Length + Devices.Length + Positions.Length > 0;

    /// <summary>Every difference in words: "rater KL, then MB".</summary>
    internal IEnumerable<string> Words =>
        [.. Raters.Select(text => $"rater {text}"), .. Devices.Select(text => $"device {text}"), .. Positions.Select(text => $"position {text}")];

    internal static Circumstances Of(KneeState old, KneeState now, Measure measure)
    {
        // Plain loops: the rules ask this many times for one draft, and mostly nothing differs.
        Circumstances found = None;
        foreach (Reading after in now.Behind(measure.Id))
        {
            foreach (Reading before in old.Behind(measure.Id).Where(one => one.Measure == after.Measure))
            {
                found = new Circumstances(
                    And(found.Raters, before.Rater ?? old.Assessment.Rater, after.Rater ?? now.Assessment.Rater),
                    And(found.Devices, before.Device, after.Device),
                    And(found.Positions, before.Position, after.Position),
                    found.Stairs ?? (measure.SameStairs ? OnStairs(before.Steps, after.Steps) : null));
            }
        }

        return found;
    }

    private static ImmutableArray<string> And(ImmutableArray<string> found, string? old, string? now)
    {
        if (old is null || now is null || string.Equals(old.Trim(), now.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            return found;
        }

        string words = $"{old.Trim()}, then {now.Trim()}";
        return found.Contains(words) ? found : found.Add(words);
    }

    private static string? OnStairs(int? old, int? now) => old == now
        ? null
        : $"the stairs differ ({Steps(old)}, then {Steps(now)}): only the same stairs can be compared";

    private static string Steps(int? steps) => steps is int count ? string.Create(CultureInfo.InvariantCulture, $"{count} steps") : "number of steps not stated";
}
