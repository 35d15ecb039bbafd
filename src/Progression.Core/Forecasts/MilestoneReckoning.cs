using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>The outlook of the milestones of a measure.</summary>
internal static class MilestoneReckoning
{
    /// <summary>The milestones that lie ahead, and those past due that the last reading does not meet.</summary>
    internal static ImmutableArray<MilestoneOutlook> Of(
        RecoveryOutlook outlook, ForecastModel model, ClinicalLibrary library, (Measure Measure, double Week, double? Last) at)
    {
        ImmutableArray<Milestone> milestones =
        [
            .. library.Milestones.Where(one => one.Measure == at.Measure.Id && CanBeReckoned(one, at.Measure) && (one.Week >= at.Week || at.Last is null || !Meets(at.Last.Value, one, at.Measure))),
        ];
        double[] weeks = [.. ForecastGrid.Weeks.Where(week => week >= at.Week)];
        if (milestones.IsEmpty || weeks.Length == 0)
        {
            return [];
        }

        bool higher = at.Measure.Better == Direction.HigherIsBetter;
        double[] targets = [.. milestones.Select(one => model.ToScale(one.Target!.Value)).Distinct().OrderBy(target => higher ? target : -target)];
        ImmutableArray<CrossingWeeks> crossings = CrossingWeeks.Of(outlook, weeks, targets, higher);
        return
        [
            .. milestones.Select(one =>
            {
                double target = model.ToScale(one.Target!.Value);
                return Of(one, Math.Max(one.Week, at.Week), crossings[Array.IndexOf(targets, target)], week => Chances(outlook.At(week), model.Error, target, at.Measure));
            }),
        ];
    }

    /// <summary>Whether a milestone of the measure has a target on its scale and falls within the horizon.</summary>
    internal static bool CanBeReckoned(Milestone milestone, Measure measure) =>
        milestone.Target is double target && milestone.Week <= PostOpWeek.Longest && (measure.Scale != ErrorScale.Logarithmic || target > 0);

    /// <summary>The probability that a value is at least as good as a target on the same scale.</summary>
    internal static double Chance(NormalMixture expected, double target, Measure measure) =>
        measure.Better == Direction.HigherIsBetter ? expected.AtLeast(target) : expected.AtMost(target);

    /// <summary>Whether a value meets the target.</summary>
    internal static bool Meets(double value, Milestone milestone, Measure measure) =>
        measure.Better == Direction.HigherIsBetter ? value >= milestone.Target : value <= milestone.Target;

    private static (double True, double Shown) Chances(NormalMixture expected, double error, double target, Measure measure) =>
        (Chance(expected, target, measure), Chance(expected.WithError(error), target, measure));

    private static MilestoneOutlook Of(Milestone milestone, double week, CrossingWeeks crossing, Func<double, (double True, double Shown)> chances)
    {
        (double real, double shown) = chances(week);
        return new MilestoneOutlook
        {
            Milestone = milestone,
            ByWeek = week,
            ChanceTrue = real,
            ChanceShown = shown,
            MedianWeek = crossing.By(0.5),
            EarlyWeek = crossing.By(0.1),
            LateWeek = crossing.By(0.9),
            NotByHorizon = crossing.Never,
            HorizonWeek = PostOpWeek.Longest,
        };
    }
}
