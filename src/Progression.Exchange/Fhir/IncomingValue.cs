using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>Reads the day and the value of an observation. A unit is read by its UCUM code, never by its words; what cannot be converted exactly is refused.</summary>
internal static class IncomingValue
{
    private const int Decimals = 6;
    private const int DayLength = 10;

    /// <summary>The day on which something was measured, as it was there: the date of a moment in its own zone.</summary>
    public static (DateOnly Day, ImportProblem? Problem) Day(IncomingEntry entry)
    {
        FhirPart resource = entry.Resource;
        string field = resource.Has("effectiveInstant") ? "effectiveInstant" : resource.Has("effectivePeriod") ? "effectivePeriod" : "effectiveDateTime";
        string text = resource.Text(field) ?? "";
        if (resource.Part("effectivePeriod") is { } period)
        {
            (string start, string end) = (period.Text("start") ?? "", period.Text("end") ?? "");
            text = start.Length >= DayLength && end.StartsWith(start[..DayLength], StringComparison.Ordinal) ? start : "";
        }

        string day = text.Length > DayLength && text[DayLength] == 'T' ? text[..DayLength] : text;
        return DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly read)
            ? (read, null)
            : (default, new ImportProblem(entry.At(field), "The day on which this was measured is missing or not one day.", "year-month-day, or a moment that begins with it", resource.Raw(field)));
    }

    /// <summary>A value in the unit of a measure, before its sign is looked at.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="part">The observation, or a component of it.</param>
    /// <param name="measure">What it is a value of.</param>
    /// <param name="path">Where the part stands, with a dot; empty for the observation.</param>
    public static (double Value, ImportProblem? Problem) Of(IncomingEntry entry, FhirPart part, Measure measure, string path)
    {
        if (part.Part("valueQuantity") is { } quantity)
        {
            return Quantity(entry, quantity, measure.Unit, path + "valueQuantity");
        }

        if (part.Whole("valueInteger") is int whole && UcumUnit.Factor("1", measure.Unit) is not null)
        {
            return (whole, null);
        }

        // A clinic's own unit has no UCUM code, so such a value leaves as words and comes back so.
        if (part.Text("valueString") is { } words && UcumUnit.Of(measure.Id, measure.Unit) is null)
        {
            Entered<Reading> entered = MeasureText.Read(measure, path + "valueString", words);
            return entered.Value is { } read ? (read.Value, null) : (0, ImportProblem.Of(entry.At(path + "valueString"), entered.Problems[0]));
        }

        return (0, new ImportProblem(entry.At(path + "value"), "There is no value with a unit here; what was not measured has no observation.", $"valueQuantity in {UcumUnit.Allowed(measure.Unit)}", ""));
    }

    /// <summary>A quantity in a unit of the library.</summary>
    public static (double Value, ImportProblem? Problem) Quantity(IncomingEntry entry, FhirPart quantity, string unit, string path)
    {
        if (quantity.Has("comparator"))
        {
            return (0, new ImportProblem(entry.At(path + ".comparator"), "This is a bound, not a value.", "a value without a comparator", quantity.Raw("comparator")));
        }

        if (quantity.Number("value") is not { } number)
        {
            return (0, new ImportProblem(entry.At(path + ".value"), "This is not a number that can be kept.", "a number of up to 28 digits", quantity.Raw("value")));
        }

        string code = quantity.Text("code") ?? "";
        if (quantity.Text("system") != UcumUnit.System || UcumUnit.Factor(code, unit) is not decimal factor)
        {
            string said = quantity.Has("code") ? $"{quantity.Raw("system")} {code}".Trim() : quantity.Raw("unit");
            return (0, new ImportProblem(entry.At(path + ".code"), "The unit is missing, not one of UCUM, or cannot be converted.", $"{UcumUnit.System} with {UcumUnit.Allowed(unit)}", said));
        }

        if (factor == 1)
        {
            return (number.Nearest, null);
        }

        return Math.Abs(number.Exact) > 1_000_000_000m
            ? (0, new ImportProblem(entry.At(path + ".value"), "The value is out of range.", "at most 1000000000", quantity.Raw("value")))
            : ((double)Math.Round(number.Exact * factor, Decimals), null);
    }
}
