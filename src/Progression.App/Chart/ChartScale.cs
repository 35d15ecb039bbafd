using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Plots;
using Progression.Core.Quantities;

namespace Progression.App.Chart;

/// <summary>Where values and weeks lie in a plot of so many rows and columns.</summary>
public sealed record ChartScale
{
    private const int RowsPerTick = 3;
    private const double Headroom = 0.04;

    private ChartScale(double least, double most, double step) => (Least, Most, Step) = (least, most, step);

    /// <summary>The value at the lower edge of the lowest row.</summary>
    public double Least { get; }

    /// <summary>The value at the upper edge of the highest row.</summary>
    public double Most { get; }

    /// <summary>From one labelled value to the next.</summary>
    public double Step { get; }

    /// <summary>The last week shown.</summary>
    public required int LastWeek { get; init; }

    /// <summary>Rows of the plot.</summary>
    public required int Rows { get; init; }

    /// <summary>Columns of the plot.</summary>
    public required int Columns { get; init; }

    /// <summary>The scale on which everything of a subject is seen in the weeks shown.</summary>
    /// <param name="subject">The subject.</param>
    /// <param name="lastWeek">The last week shown.</param>
    /// <param name="rows">Rows of the plot, at least 3.</param>
    /// <param name="columns">Columns of the plot, at least 10.</param>
    public static ChartScale Of(ChartSubject subject, int lastWeek, int rows, int columns)
    {
        ArgumentNullException.ThrowIfNull(subject);
        List<double> values = [.. Values(subject, lastWeek)];
        (double low, double high) = values.Count == 0 ? (subject.Measure.Least, subject.Measure.Most) : (values.Min(), values.Max());
        double margin = Math.Max((high - low) * Headroom, 1e-6 + (Math.Abs(high) * 1e-3));
        double step = RoundStep.NotUnder((high - low + (2 * margin)) * RowsPerTick / rows);
        return new(low - margin, high + margin, step) { LastWeek = lastWeek, Rows = rows, Columns = columns };
    }

    /// <summary>The row of a value, 0 at the top; outside the plot when the value is.</summary>
    public int Row(double value) => (int)Math.Floor(Depth(value));

    /// <summary>Where in its row a value lies: 0 in the upper third, 1 in the middle, 2 in the lower one.</summary>
    public int Third(double value) => Math.Clamp((int)((Depth(value) - Math.Floor(Depth(value))) * 3), 0, 2);

    /// <summary>The column of a week, 0 at the operation.</summary>
    public int Column(double week) => (int)Math.Round(week / LastWeek * (Columns - 1), MidpointRounding.AwayFromZero);

    /// <summary>The week of a column.</summary>
    public double Week(int column) => (double)column * LastWeek / (Columns - 1);

    /// <summary>The values that are labelled, each in the row it falls into, the highest first.</summary>
    public ImmutableSortedDictionary<int, double> Ticks => Enumerable
        .Range(0, 1 + (int)Math.Floor((Most / Step) - Math.Ceiling(Least / Step)))
        .Select(at => (Math.Ceiling(Least / Step) + at) * Step)
        .DistinctBy(Row)
        .Where(value => Row(value) >= 0 && Row(value) < Rows)
        .ToImmutableSortedDictionary(Row, value => value);

    private double Depth(double value) => (Most - value) / (Most - Least) * Rows;

    private static IEnumerable<double> Values(ChartSubject subject, int lastWeek)
    {
        IEnumerable<double> dots = subject.Dots.SelectMany(dot => new[] { dot.Value, dot.Low ?? dot.Value, dot.High ?? dot.Value });
        IEnumerable<ForecastPoint> points = subject.Forecast is null ? [] : subject.Forecast.Points.Where(point => point.Week <= lastWeek);
        IEnumerable<double> goals = subject.Goals.Where(goal => goal.Week <= lastWeek).Select(goal => goal.Target!.Value);
        return [.. dots, .. points.SelectMany(point => new[] { point.Low90, point.High90 }), .. goals];
    }
}
