using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Outcomes;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.Core.Plots;

/// <summary>How many of a clinic's people have reached a goal by which week: steps up, with the interval around them and a tick where somebody was looked at last.</summary>
public static class WaitPlot
{
    /// <summary>What is told wherever such a curve stands.</summary>
    public const string Caution =
        "A goal is seen at visits only, so the steps stand later than what they show. Who was not seen to reach it counts up to the last visit at which it was looked for; "
        + "that those who stop coming are like those who stay is assumed.";

    private const int LeastWeeks = 4;
    private const int Labels = 14;
    private const double Percent = 100;
    private const double Headroom = 3;

    /// <summary>The plot.</summary>
    /// <param name="figures">What was reckoned.</param>
    /// <param name="least">How many people a figure needs: fewer still followed are not counted aloud.</param>
    public static PlotContent Of(WaitFigures figures, int least)
    {
        ArgumentNullException.ThrowIfNull(figures);
        KaplanMeier curve = figures.Curve;
        double last = Math.Max(LeastWeeks, curve.Steps[^1].Time);
        double step = Math.Max(1, RoundStep.NotUnder(last / Labels));
        return new PlotContent
        {
            Title = figures.Goal.Title.Split(", as ")[0] + ": weeks from the operation",
            Words = Words(figures),
            Across = new PlotAxis("Weeks since the operation (0 is the day of the operation)", 0, last * 1.03, step),
            Up = new PlotAxis("Share of people who have reached it, %", 0, Percent + Headroom, 20),
            Parts =
            [
                new PlotPart.Range(Around(curve), IsDark: false) { Legend = "interval, 95 %" },
                new PlotPart.Line(Steps(curve), PlotStroke.Solid) { Legend = "reached it" },
                new PlotPart.Marks([.. curve.Steps.Where(one => one.Censored > 0).Select(one => new PlotMark(one.Time, Met(one.Waiting)))], PlotForm.Tick) { Legend = "looked at for the last time" },
            ],
            Note = $"{AtRisk(curve, step, least)} {Caution}",
        };
    }

    // Flat to each time, then up.
    private static ImmutableArray<PlotPoint> Steps(KaplanMeier curve)
    {
        ImmutableArray<PlotPoint>.Builder points = ImmutableArray.CreateBuilder<PlotPoint>();
        points.Add(new PlotPoint(0, 0));
        foreach (KaplanMeierStep step in curve.Steps)
        {
            points.Add(points[^1] with { X = step.Time });
            points.Add(new PlotPoint(step.Time, Met(step.Waiting)));
        }

        return points.ToImmutable();
    }

    // Before the first event, and where nobody waits any more, there is no interval.
    private static ImmutableArray<PlotRange> Around(KaplanMeier curve)
    {
        ImmutableArray<PlotRange>.Builder points = ImmutableArray.CreateBuilder<PlotRange>();
        foreach (KaplanMeierStep step in curve.Steps)
        {
            if (points.Count > 0)
            {
                points.Add(points[^1] with { X = step.Time });
            }

            if (step is { Low: double low, High: double high })
            {
                points.Add(new PlotRange(step.Time, Met(high), Met(low)));
            }
        }

        return points.ToImmutable();
    }

    private static double Met(double waiting) => Percent * (1 - waiting);

    private static string AtRisk(KaplanMeier curve, double step, int least)
    {
        IEnumerable<double> weeks = Enumerable.Range(0, 1 + (int)(curve.Steps[^1].Time / (2 * step))).Select(at => 2 * step * at);
        return "Not yet there and still followed: " + string.Join(", ", weeks.Select(week =>
        {
            int left = curve.Steps.Where(one => one.Time > week).Select(one => one.AtRisk).FirstOrDefault();
            return $"{(left < least ? $"under {least}" : left.ToString(CultureInfo.InvariantCulture))} after week {Number.Text(week)}";
        })) + $". The curve ends where fewer than {least} are followed.";
    }

    private static string Words(WaitFigures figures)
    {
        string half = figures.Curve.Median is double median ? $"half had reached it by week {Number.Text(median, 1)}" : "that half reached it is not seen";
        IEnumerable<string> weeks = from week in new[] { 1.0, 2, 3, 4, 6, 8, 12, 26 }
                                    let reached = figures.ReachedBy(week)
                                    where reached is not null
                                    select $"{Number.Text(Percent * reached.Value.Share, 0)} % by week {Number.Text(week)}";
        return $"{figures.Goal.Title}. {figures.People} people, {figures.Events} seen to reach it; {half}. {string.Join(", ", weeks)}. {Caution}";
    }
}
