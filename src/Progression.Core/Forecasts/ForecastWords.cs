using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Forecasts;

/// <summary>
/// A point of a forecast in words. It is told no more finely than it is known: degrees and percent in fives, other units in the round step next above a
/// quarter of the range (common practice, no source). Ranges are rounded outwards, so that they never look surer than they are.
/// </summary>
public static class ForecastWords
{
    private const double Fives = 5;
    private const int PartsOfRange = 4;

    /// <summary>"about 95 deg, 8 in 10 between 85 and 105".</summary>
    public static string Of(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        string unit = measure.Unit is "1" or "" ? "" : " " + measure.Unit;
        return $"about {Middle(point, measure)}{unit}, 8 in 10 between {Range(point, measure, (point.Low80, point.High80), " and ")}";
    }

    /// <summary>A chance from 0 to 1 in tenths: "about 7 in 10", "fewer than 1 in 10".</summary>
    public static string InTen(double chance) => (int)Math.Round(10 * chance, MidpointRounding.AwayFromZero) switch
    {
        0 => "fewer than 1 in 10",
        10 => "more than 9 in 10",
        int tenths => $"about {tenths} in 10",
    };

    /// <summary>The middle, rounded.</summary>
    public static string Middle(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        double step = Step(point, measure);
        return Number.Text(Math.Round(point.Median / step, MidpointRounding.AwayFromZero) * step, 2);
    }

    /// <summary>A range, rounded outwards and kept within what the measure can be.</summary>
    public static string Range(ForecastPoint point, Measure measure, (double Low, double High) range, string between = "–")
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        double step = Step(point, measure);
        double low = Math.Max(ForecastGrid.Least(measure), Math.Floor(range.Low / step) * step);
        double high = Math.Min(measure.Most, Math.Ceiling(range.High / step) * step);
        return $"{Number.Text(low, 2)}{between}{Number.Text(high, 2)}";
    }

    /// <summary>The step to which the figures of a point are rounded.</summary>
    public static double Step(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        double width = point.High80 - point.Low80;
        return measure.Unit is "deg" or "%" || width <= 0 ? Fives : RoundStep.NotUnder(width / PartsOfRange);
    }
}
