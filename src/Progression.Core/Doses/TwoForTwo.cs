using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>Load rises when it is earned: two or more repetitions over the goal in the last set, in two sessions in a row with the same load.</summary>
public static class TwoForTwo
{
    /// <summary>Repetitions over the goal that count, at least.</summary>
    public const int Extra = 2;

    /// <summary>Sessions in a row.</summary>
    public const int Sessions = 2;

    /// <summary>The smallest rise, in percent of the load.</summary>
    public const double LeastRise = 2.5;

    /// <summary>The largest rise, in percent of the load.</summary>
    public const double MostRise = 10;

    /// <summary>Where the rule comes from. Another body gives 2 to 10 % (from memory).</summary>
    public static Source Source { get; } = new("Baechle and Earle: the 2-for-2 rule, 2.5 to 10 %", Standing.Seen);

    /// <summary>The load of the next session.</summary>
    /// <param name="goal">Repetitions the last set is meant to have, from 1.</param>
    /// <param name="lastSets">The last set of each session, oldest first; only the latest two count.</param>
    public static NextLoad After(int goal, ImmutableArray<LoggedSet> lastSets)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(goal, 1);
        if (lastSets.IsDefaultOrEmpty || lastSets[^1].Load is not { } load)
        {
            return new NextLoad(null, lastSets.IsDefaultOrEmpty ? "No session is logged." : $"The load of {lastSets[^1].Day} is not recorded.", Source);
        }

        ImmutableArray<LoggedSet> counted = [.. lastSets.TakeLast(Sessions)];
        string done = string.Join(", ", counted.Select(set => $"{set.Day}: {Text(set)}"));
        bool? earned = counted.Aggregate(counted.Length < Sessions ? null : (bool?)true, (all, set) => all & Over(set, goal, load));
        return earned switch
        {
            true => new NextLoad(
                LoadRange.Between(load.Kilograms * (1 + (LeastRise / 100)), load.Kilograms * (1 + (MostRise / 100))),
                $"At least {goal + Extra} repetitions in the last set, {Sessions} sessions in a row ({done}): raise by {Number.Text(LeastRise)} to {Number.Text(MostRise)} %.",
                Source),
            false => new NextLoad(LoadRange.At(load), $"Not yet {goal + Extra} repetitions in the last set, {Sessions} sessions in a row with one load ({done}): the load stays.", Source),
            null => new NextLoad(null, counted.Length < Sessions ? $"One session is logged ({done}); the rule asks for {Sessions}." : $"Repetitions or load are not recorded ({done}).", Source),
        };
    }

    /// <summary>Whether a set was enough; null when what is not recorded decides it. A set with another load than the latest is not one of two in a row.</summary>
    private static bool? Over(LoggedSet set, int goal, Mass load) =>
        (set.Load is null ? (bool?)null : set.Load == load) & (set.Repetitions is int done ? done >= goal + Extra : (bool?)null);

    private static string Text(LoggedSet set) => $"{(set.Repetitions is int done ? $"{done}" : "?")} at {(set.Load is { } load ? $"{load}" : "?")}";
}
