using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>Three sets of ten, rising to the load that can be lifted ten times and no more.</summary>
public static class DeLorme
{
    private const int Repetitions = 10;

    private static readonly ImmutableArray<double> Shares = [0.50, 0.75, 1.00];

    /// <summary>Where the method comes from; the paper itself was not opened.</summary>
    public static Source Source { get; } = new("DeLorme: ten repetitions at 50, 75 and 100 % of the ten-repetition maximum", Standing.Seen);

    /// <summary>The ten-repetition maximum as last tested: the heaviest load of the latest day on which a set of ten was logged with its load.</summary>
    /// <param name="sets">Every set logged, oldest first.</param>
    public static NextLoad Tested(ImmutableArray<LoggedSet> sets)
    {
        LoggedSet? last = sets.LastOrDefault(IsTest);
        if (last is null)
        {
            return new NextLoad(null, $"No set of {Repetitions} with its load is logged.", Source);
        }

        Mass tested = sets.Where(set => set.Date == last.Date && IsTest(set)).Select(set => set.Load!).MaxBy(load => load.Kilograms)!;
        string steps = string.Join(", ", Sets(tested).Select(set => Number.Text(set.Load.Kilograms)));
        return new NextLoad(
            LoadRange.At(tested), $"The heaviest set of {Repetitions} logged {last.Day} was at {tested}: {Repetitions} repetitions each at {steps} kg (50, 75 and 100 %).", Source);
    }

    private static bool IsTest(LoggedSet set) => set.Repetitions >= Repetitions && set.Load is not null;

    /// <summary>The sets of a session, first to last.</summary>
    /// <param name="tenRepetitionMaximum">The load that can be lifted ten times and no more, as last tested.</param>
    public static ImmutableArray<WorkSet> Sets(Mass tenRepetitionMaximum) =>
        [.. Shares.Select(share => new WorkSet(Repetitions, Mass.FromKilograms(tenRepetitionMaximum.Kilograms * share)))];
}
