using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>How the value of a measure is written: "62 Nm", "95 deg", "12" for a count, "1+" for effusion.</summary>
public static class MeasureText
{
    // A bare 1 could mean trace or one plus: the grade is written as it is spoken.
    private static readonly ImmutableArray<string> Effusion = ["none", "trace", "1+", "2+", "3+"];

    /// <summary>How a measure is read: its units and the range of the library.</summary>
    public static QuantityForm<Reading> Form(Measure measure) => new()
    {
        Name = "The value",
        Unit = measure.Unit == "1" ? "" : measure.Unit,
        Units = Units(measure.Unit),
        Least = (decimal)measure.Least,
        Most = (decimal)measure.Most,
        Make = value => new Reading(measure.Id, value),
    };

    /// <summary>Reads a value.</summary>
    public static Entered<Reading> Read(Measure measure, string field, string text)
    {
        if (measure.Id == MeasureIds.Effusion)
        {
            int grade = Effusion.IndexOf(text);
            return grade >= 0
                ? Entered<Reading>.Good(new Reading(measure.Id, grade))
                : Entered<Reading>.Bad(new Problem(field, "This is not a grade of the stroke test.", string.Join(", ", Effusion), text));
        }

        QuantityForm<Reading> form = Form(measure);
        Entered<Reading> entered = form.Read(field, text);
        return measure.Whole && entered.Value is Reading { Value: double value } && value != Math.Floor(value)
            ? Entered<Reading>.Bad(new Problem(field, "This is not a whole number.", form.Allowed, text))
            : entered;
    }

    /// <summary>Writes a value so that <see cref="Read"/> gives it back.</summary>
    public static string Write(Measure measure, double value) =>
        measure.Id == MeasureIds.Effusion && value >= 0 && value < Effusion.Length && value == Math.Floor(value) ? Effusion[(int)value]
        : measure.Unit == "1" ? Amount(value)
        : $"{Amount(value)} {measure.Unit}";

    /// <summary>A value to be looked at, rounded to two decimals: "62.33 Nm", "2+" for effusion.</summary>
    public static string Shown(Measure measure, double value) => measure.Id == MeasureIds.Effusion ? Write(measure, value) : Amount(measure, value);

    /// <summary>A difference or an error to be looked at, with its unit: "9.31 deg", "1" for a step.</summary>
    public static string Amount(Measure measure, double value, int decimals = 2) => Number.Text(value, decimals) + (measure.Unit == "1" ? "" : " " + measure.Unit);

    /// <summary>A number with every digit that counts (up to 15), never with an exponent.</summary>
    public static string Amount(double value) => ((decimal)value).ToString("0.###############", CultureInfo.InvariantCulture);

    /// <summary>A quantity with its unit; null where there is none.</summary>
    public static string? Amount(double? value, string unit) => value is double amount ? $"{Amount(amount)} {unit}" : null;

    private static ImmutableArray<UnitWord> Units(string unit) => unit switch
    {
        "1" => [new UnitWord("")],
        "deg" => QuantityText.Angle.Units,
        "Nm" => QuantityText.Torque.Units,
        "N" => QuantityText.Force.Units,
        "cm" => QuantityText.Length.Units,
        "kg" => QuantityText.Mass.Units,
        "s" => QuantityText.Duration.Units,
        "%" => QuantityText.Percentage.Units,
        _ => [new UnitWord(unit, 1, IsShown: true)],
    };
}
