using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Plots;

/// <summary>The course of one measure since the operation: what was measured with its error, what usually follows, and the milestones the plan aims at.</summary>
public static class CoursePlot
{
    private const int NearWeeks = 12;
    private const double Margin = 0.3; // So that a milestone in the last week is whole.
    private const double Headroom = 0.06;
    private const int Labels = 8;
    private const int LongestLabel = 44;

    /// <summary>The plot.</summary>
    /// <param name="subject">What is known of the measure.</param>
    /// <param name="code">The code that stands for the person.</param>
    /// <param name="today">Weeks since the operation, today: the weeks shown reach two beyond it, and to week 12 at least.</param>
    public static PlotContent Of(ChartSubject subject, CaseCode code, double today)
    {
        ArgumentNullException.ThrowIfNull(subject);
        ArgumentNullException.ThrowIfNull(code);
        double last = subject.Dots.Select(dot => dot.Week).Append(today).Max();
        int weeks = (int)Math.Clamp(Math.Ceiling(last) + 2, NearWeeks, Math.Max(PostOpWeek.Longest, Math.Ceiling(last)));
        ImmutableArray<ForecastPoint> points = subject.Forecast is { } forecast ? [.. forecast.Points.Where(point => point.Week <= weeks)] : [];
        ImmutableArray<Milestone> goals = [.. subject.Goals.Where(goal => goal.Drives && goal.Week <= weeks)];
        ImmutableArray<PlotPart> parts = [.. Expected(points), .. Goals(goals, subject.Measure), .. Measured(subject)];
        return new PlotContent
        {
            Title = $"{Name(subject.Measure)}, {code}",
            Words = CourseWords.Of(subject, code, (points, goals)),
            Across = new PlotAxis("Weeks since the operation (0 is the day of the operation)", 0, weeks + Margin, weeks > 14 ? 2 : 1),
            Up = Values(subject, points, goals),
            Parts = parts,
            Note = subject.Forecast is null ? $"No forecast: {subject.WhyNot}" : "What usually follows under usual care: a range and a chance, never a promise. A clinician decides.",
        };
    }

    private static IEnumerable<PlotPart> Expected(ImmutableArray<ForecastPoint> points)
    {
        if (points.IsEmpty)
        {
            yield break;
        }

        yield return new PlotPart.Range([.. points.Select(point => new PlotRange(point.Week, point.Low90, point.High90))], IsDark: false) { Legend = "9 in 10 true values" };
        yield return new PlotPart.Range([.. points.Select(point => new PlotRange(point.Week, point.Low80, point.High80))], IsDark: true) { Legend = "8 in 10" };
        int known = points.Count(point => !point.BeyondPrior);
        if (known > 0)
        {
            yield return Middle(points[..known], PlotStroke.Dashed) with { Legend = "expected, the middle" };
        }

        if (known < points.Length)
        {
            yield return Middle(points[Math.Max(0, known - 1)..], PlotStroke.Dotted) with { Legend = "beyond the published data" };
        }
    }

    private static PlotPart.Line Middle(ImmutableArray<ForecastPoint> points, PlotStroke stroke) => new([.. points.Select(point => new PlotPoint(point.Week, point.Median))], stroke);

    private static IEnumerable<PlotPart> Goals(ImmutableArray<Milestone> goals, Measure measure) => goals.IsEmpty ? [] :
    [
        new PlotPart.Marks([.. goals.Select(goal => Mark(goal, measure))], PlotForm.Diamond) { Legend = "milestone: by that week" },
    ];

    // The words stand on the side from which the course comes no more.
    private static PlotMark Mark(Milestone goal, Measure measure)
    {
        bool rises = measure.Better == Direction.HigherIsBetter;
        return new(goal.Week, goal.Target!.Value) { Label = $"{(rises ? "≥" : "≤")} {Number.Text(goal.Target.Value, 1)}, week {Number.Text(goal.Week, 1)}", IsLabelAbove = !rises };
    }

    private static IEnumerable<PlotPart> Measured(ChartSubject subject) => subject.Dots.IsEmpty ? [] :
    [
        new PlotPart.Marks([.. subject.Dots.Select(dot => new PlotMark(dot.Week, dot.Value) { Low = dot.Low, High = dot.High })], PlotForm.Disc)
        {
            Legend = subject.Dots.Any(dot => dot.Low is not null) ? "measured, with the error (9 in 10)" : "measured",
        },
    ];

    private static PlotAxis Values(ChartSubject subject, ImmutableArray<ForecastPoint> points, ImmutableArray<Milestone> goals)
    {
        double[] values =
        [
            .. subject.Dots.SelectMany(dot => new[] { dot.Value, dot.Low ?? dot.Value, dot.High ?? dot.Value }),
            .. points.SelectMany(point => new[] { point.Low90, point.High90 }), .. goals.Select(goal => goal.Target!.Value),
        ];
        (double low, double high) = values.Length == 0 || subject.Measure.Scale == ErrorScale.Ordinal ? (subject.Measure.Least, subject.Measure.Most) : (values.Min(), values.Max());
        double margin = Math.Max((high - low) * Headroom, 0.5 * RoundStep.NotUnder(Math.Max(1e-3, Math.Abs(high) * 1e-2)));
        double step = RoundStep.NotUnder((high - low + (2 * margin)) / Labels);
        string name = Name(subject.Measure) is { Length: <= LongestLabel } fits ? fits : "Value";
        string unit = subject.Measure.Unit == "1" ? "" : $", {subject.Measure.Unit}";
        return new PlotAxis(name + unit, low - margin, high + margin, subject.Measure.Whole || subject.Measure.Scale == ErrorScale.Ordinal ? Math.Max(1, step) : step);
    }

    // What a title says in brackets stands in the words.
    private static string Name(Measure measure) => measure.Title.Split(" (")[0];
}
