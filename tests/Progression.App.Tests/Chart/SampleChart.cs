using System.Collections.Immutable;
using Progression.App.Chart;
using Progression.App.Tests.Compare;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plots;

namespace Progression.App.Tests.Chart;

/// <summary>
/// Flexion measured as 72, 84 and 88 deg in weeks 1 to 3 and its forecast: the project's worked example of its reference on measures, part 4.3 C, at weeks
/// 6, 8 and 12; the points between are drawn in by eye.
/// </summary>
internal static class SampleChart
{
    private static readonly Source Derived = new("Worked example of the project's reference on measures", Standing.Derived);

    // Week, median, 80 % low and high; 90 % is put a quarter further out.
    private static readonly (double Week, double Median, double Low, double High)[] Known =
        [(0.5, 68, 64, 72), (1, 73, 69.5, 76.5), (3, 88, 84.5, 91.5), (6, 100.8, 94.8, 106.8), (8, 105.2, 98.4, 112), (12, 109.8, 101.8, 118), (26, 113, 103, 123)];

    public static ChartState State => Of(Flexion);

    public static ChartState Withheld => Of(Flexion with { Forecast = null, WhyNot = "A red flag is open: calf signs. Forecasts wait until a clinician has closed it." });

    public static ChartState Of(params ImmutableArray<ChartSubject> subjects) =>
        new ChartState { Title = "K-014  right knee, operated 28 Sep 2026", Subjects = subjects, Today = 3.3 }.AtWeek(4);

    public static ChartSubject Flexion { get; } = new()
    {
        Measure = SampleComparison.Flexion with { Most = 160 },
        Dots = [Dot(1, 72), Dot(2, 84), Dot(3, 88)],
        Goals = [Goal("bend-80", 80, 2), Goal("bend-90", 90, 4), Goal("bend-110", 110, 8), Goal("bend-120", 120, 26)],
        Forecast = Forecast(),
    };

    public static ChartSubject Walk { get; } = new()
    {
        Measure = SampleComparison.Rises,
        Dots = [ChartDot.Of(Day(2), 2, 14, 0.1128, ErrorScale.Logarithmic), ChartDot.Of(Day(3), 3, 11.5, 0.1128, ErrorScale.Logarithmic)],
        Goals = [],
        WhyNot = "No published course to start from, and 2 own readings where 3 are needed.",
    };

    private static Milestone Goal(string id, double target, double week) => new(id, $"Bends to {target} deg", MeasureIds.FlexionActive, week, target, true, Derived);

    private static ChartDot Dot(int week, double value) => ChartDot.Of(Day(week), week, value, 4, ErrorScale.Linear);

    private static DateOnly Day(int week) => SampleComparison.Operated.AddDays(7 * week);

    private static Forecast Forecast() => new()
    {
        Measure = SampleComparison.Flexion with { Most = 160 },
        AsOf = Day(3),
        Basis = ForecastBasis.Population,
        BasisWords = "population prior (derived), wide; 3 readings, error 4 deg",
        Readings = 3,
        ErrorUsed = 4,
        Points = [.. Enumerable.Range(1, 52).Select(half => Point(half / 2.0))],
        Measured = [(1, 72), (2, 84), (3, 88)],
        Milestones = [Outlook("bend-110", 110, 8, 0.182), Outlook("bend-120", 120, 26, 0.1)],
        Surprise = new(-0.4, false, "within what was expected"),
        Source = Derived,
    };

    private static MilestoneOutlook Outlook(string id, double target, double week, double chance) => new()
    {
        Milestone = Goal(id, target, week),
        ByWeek = week,
        ChanceTrue = chance,
        ChanceShown = chance,
        MedianWeek = 11.5,
        EarlyWeek = 7.5,
        LateWeek = null,
        NotByHorizon = 0.17,
        HorizonWeek = 26,
    };

    private static ForecastPoint Point(double week)
    {
        int after = Math.Max(1, Array.FindIndex(Known, known => known.Week >= week));
        var (one, other) = (Known[after - 1], Known[after]);
        double share = (week - one.Week) / (other.Week - one.Week);
        double At(double from, double to) => from + (share * (to - from));
        (double median, double low, double high) = (At(one.Median, other.Median), At(one.Low, other.Low), At(one.High, other.High));
        double more = (high - low) / 8;
        return new(week, (share, isSeen) => share switch
        {
            0.5 => median,
            < 0.1 => low - more,
            < 0.5 => isSeen ? low - 3 : low,
            > 0.9 => high + more,
            _ => isSeen ? high + 3 : high,
        })
        {
            BeyondPrior = week > 12,
        };
    }
}
