using Progression.App.Pictures;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.App.Chart;

/// <summary>
/// What is expected is told no more finely than it is known: degrees and percent in fives, other units in the round step next above a quarter of
/// the range (common practice, no source). Ranges are rounded outwards, so that they never look surer than they are.
/// </summary>
public static class ChartRounding
{
    private const double Fives = 5;
    private const int PartsOfRange = 4;

    /// <summary>"about 100 deg, 8 in 10 between 90 and 110".</summary>
    public static string Expected(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        return $"about {Middle(point, measure)}{MeasureLabel.Unit(measure)}, 8 in 10 between {Range(point, measure, (point.Low80, point.High80), " and ")}";
    }

    /// <summary>The middle, rounded.</summary>
    public static string Middle(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        double step = Step(point, measure);
        return Number.Text(Math.Round(point.Median / step, MidpointRounding.AwayFromZero) * step);
    }

    /// <summary>A range, rounded outwards and kept within what may be entered for the measure.</summary>
    public static string Range(ForecastPoint point, Measure measure, (double Low, double High) range, string between = "–")
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        double step = Step(point, measure);
        double low = Math.Max(measure.Least, Math.Floor(range.Low / step) * step);
        double high = Math.Min(measure.Most, Math.Ceiling(range.High / step) * step);
        return $"{Number.Text(low)}{between}{Number.Text(high)}";
    }

    /// <summary>The step that figures of a point are rounded to.</summary>
    public static double Step(ForecastPoint point, Measure measure)
    {
        ArgumentNullException.ThrowIfNull(point);
        ArgumentNullException.ThrowIfNull(measure);
        double width = point.High80 - point.Low80;
        return measure.Unit is "deg" or "%" || width <= 0 ? Fives : ChartScale.NiceStep(width / PartsOfRange);
    }
}
