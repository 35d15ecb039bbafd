using System.Globalization;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Exchange.Import;

/// <summary>Whether a reading found in a file may be one of this case, taken by itself.</summary>
internal static class ReadingCheck
{
    /// <summary>What is wrong with it; null when nothing is.</summary>
    public static ImportProblem? Of(ImportGround ground, FoundReading found)
    {
        Reading reading = found.Reading;
        if (MeasureIds.Computed.Contains(reading.Measure))
        {
            return new ImportProblem(found.Place, "This is computed from other readings and not entered.", "the readings it is computed from", reading.Measure);
        }

        if (!ground.Library.Measures.TryGetValue(reading.Measure, out Measure? measure))
        {
            return new ImportProblem(found.Place, "There is no such measure.", "the id of a measure of the library", reading.Measure);
        }

        return ground.WrongDay(found.Place, found.Day, found.SaidBaseline ?? true)
            ?? Baseline(ground, found)
            ?? Value(measure, found)
            ?? Whole(found, reading.Trials, Reading.MostTrials, "trials")
            ?? Whole(found, reading.Steps, Reading.MostSteps, "steps");
    }

    private static ImportProblem? Baseline(ImportGround ground, FoundReading found) =>
        found.SaidBaseline == true && found.Day > ground.Patient.Operation.Date
            ? new ImportProblem(found.Place, "The visit before the operation lies after it.", $"a day up to {ground.Patient.Operation.Date:yyyy-MM-dd}", $"{found.Day:yyyy-MM-dd}")
            : null;

    private static ImportProblem? Value(Measure measure, FoundReading found)
    {
        double value = found.Reading.Value;
        string? wrong = !double.IsFinite(value) || value < measure.Least || value > measure.Most ? "The value is out of range."
            : measure.Whole && value != Math.Floor(value) ? "This is not a whole number."
            : null;
        return wrong is null ? null : new ImportProblem(found.Place, wrong, MeasureText.Form(measure).Allowed, Text(measure, value));
    }

    private static string Text(Measure measure, double value) =>
        Math.Abs(value) < 1e15 ? MeasureText.Write(measure, value) : value.ToString(CultureInfo.InvariantCulture);

    private static ImportProblem? Whole(FoundReading found, int? number, int most, string what) => number is null || (number >= 1 && number <= most)
        ? null
        : new ImportProblem(found.Place, $"The number of {what} is out of range.", $"1 to {most} {what}", number.Value.ToString(CultureInfo.InvariantCulture));
}
