using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.App.Pictures;

/// <summary>How a measure and its values are written on a screen, where the unit stands once for all of them.</summary>
public static class MeasureLabel
{
    private const double Small = 10;

    /// <summary>The name with the unit: "Active flexion, deg".</summary>
    public static string Name(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Title + (measure.Unit == "1" ? "" : $", {measure.Unit}");
    }

    /// <summary>The unit with a space before it; empty for a plain number.</summary>
    public static string Unit(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Unit == "1" ? "" : $" {measure.Unit}";
    }

    /// <summary>A value without its unit: "92", "1+" for effusion.</summary>
    public static string Value(Measure measure, double value)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Id == MeasureIds.Effusion ? MeasureText.Write(measure, value) : Number.Text(value, Decimals(measure));
    }

    /// <summary>A difference with its sign, without the unit.</summary>
    public static string Difference(Measure measure, double difference) => Number.Signed(difference, Decimals(measure));

    /// <summary>A size without its unit, as a difference or a limit has it.</summary>
    public static string Amount(Measure measure, double amount) => Number.Text(amount, Decimals(measure));

    /// <summary>Whether more of it is better.</summary>
    public static bool IsHigherBetter(Measure measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Better == Direction.HigherIsBetter;
    }

    /// <summary>"more is better" or "less is better".</summary>
    public static string Better(Measure measure) => IsHigherBetter(measure) ? "more is better" : "less is better";

    // A metre per second or a newton metre per kilogram says little in tenths.
    private static int Decimals(Measure measure) => measure.Most < Small && !measure.Whole ? 2 : 1;
}
