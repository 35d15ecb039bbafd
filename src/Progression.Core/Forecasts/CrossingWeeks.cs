using System.Collections.Immutable;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>
/// The week in which the true value first meets a target, over courses drawn on the grid with fixed numbers, so that the same case gets the same answer.
/// First passage: a value that passes once may fall back.
/// </summary>
internal sealed class CrossingWeeks
{
    /// <summary>Courses drawn.</summary>
    internal const int Courses = 2000;

    private const ulong Seed = 20261125;

    /// <summary>Normal numbers for every course and week, drawn once for all forecasts.</summary>
    private static readonly Lazy<double[]> Draws = new(() =>
    {
        SeededNumbers numbers = new(Seed);
        return [.. Enumerable.Range(0, Courses * Forecast.GridWeeks).Select(_ => numbers.NextNormal())];
    });

    private readonly double[] _sorted;

    private CrossingWeeks(double[] weeks)
    {
        Array.Sort(weeks);
        _sorted = weeks;
    }

    /// <summary>Share of the courses that do not meet the target within the grid.</summary>
    internal double Never => (double)_sorted.Count(double.IsPositiveInfinity) / _sorted.Length;

    /// <summary>The week by which a share of the courses has met the target; null when that is not within the grid.</summary>
    internal double? By(double share) =>
        _sorted[Math.Min(_sorted.Length - 1, (int)(share * _sorted.Length))] is double week && double.IsFinite(week) ? week : null;

    /// <summary>The crossing weeks of several targets.</summary>
    /// <param name="outlook">What is expected.</param>
    /// <param name="weeks">The grid from the present week on.</param>
    /// <param name="targets">The targets on the scale of the model, easiest first.</param>
    /// <param name="higherIsBetter">Whether a target is met from below.</param>
    internal static ImmutableArray<CrossingWeeks> Of(RecoveryOutlook outlook, double[] weeks, double[] targets, bool higherIsBetter)
    {
        double[][] met = [.. targets.Select(_ => new double[Courses])];
        Func<int, (double[] Means, double[] Factor)> joint = outlook.Joint(weeks);
        (int course, double weight) = (0, 0);
        for (int i = 0; i < outlook.Weights.Length; i++)
        {
            weight += outlook.Weights[i];
            int end = i == outlook.Weights.Length - 1 ? Courses : (int)Math.Round(weight * Courses);
            if (end > course)
            {
                (double[], double[]) combined = joint(i);
                for (; course < end; course++)
                {
                    Follow(course, combined, (weeks, targets, higherIsBetter ? 1 : -1), met);
                }
            }
        }

        return [.. met.Select(each => new CrossingWeeks(each))];
    }

    /// <summary>Follows one course until it has met every target.</summary>
    private static void Follow(int course, (double[] Means, double[] Factor) joint, (double[] Weeks, double[] Targets, int Way) aim, double[][] met)
    {
        ReadOnlySpan<double> draws = Draws.Value.AsSpan(course * Forecast.GridWeeks, aim.Weeks.Length);
        int next = 0;
        for (int week = 0; week < aim.Weeks.Length && next < aim.Targets.Length; week++)
        {
            double value = joint.Means[week] + Triangle.Dot(joint.Factor.AsSpan(week * aim.Weeks.Length, week + 1), draws[..(week + 1)]);
            while (next < aim.Targets.Length && aim.Way * (value - aim.Targets[next]) >= 0)
            {
                met[next++][course] = aim.Weeks[week];
            }
        }

        for (; next < aim.Targets.Length; next++)
        {
            met[next][course] = double.PositiveInfinity;
        }
    }
}
