using System.Globalization;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Commands.Reassess;

/// <summary>A comparison as plain text: the values as a table, then a sentence on each change.</summary>
internal static class CompareText
{
    private const int TitleColumns = 40;
    private const int ValueColumns = 8;

    internal static string Of(Case patient, Comparison comparison, double level, int width)
    {
        int shown = Math.Min(comparison.Visits.Length, (width - TitleColumns - 2) / ValueColumns);
        int hidden = comparison.Visits.Length - shown;
        return string.Join('\n',
        [
            $"{patient.Code}: {comparison.Rows.Length} measures over {comparison.Visits.Length} visits",
            .. hidden > 0 ? [$"The newest {shown} visits; the {hidden} before them are in the answer as JSON."] : Array.Empty<string>(),
            "",
            Head(comparison, shown),
            .. comparison.Rows.Select(row => Values(row, shown)),
            "",
            $"Changes since the operation, last two values, at {Number.Text(level)} %:",
            .. comparison.Rows.SelectMany(row => Told(row, width)),
            "",
            .. Wrapped("Marks: + improved, - worse, ~ no detectable change, ! possible worsening, ? not classed; . not measured.", width),
            .. comparison.FalseAlarm.Length > 0 ? Wrapped(comparison.FalseAlarm, width) : [],
            .. Wrapped(PlanText.Caution, width),
        ]);
    }

    private static string Head(Comparison comparison, int shown) => "Measure".PadRight(TitleColumns) + string.Concat(comparison.Visits
        .Select((day, place) => (place == 0 && comparison.HasPreOp ? "pre-op" : day.ToString("MM-dd", CultureInfo.InvariantCulture)).PadLeft(ValueColumns))
        .TakeLast(shown));

    private static string Values(ComparisonRow row, int shown)
    {
        string unit = row.Measure.Unit == "1" ? "" : $", {row.Measure.Unit}";
        string title = TextFit.Exactly(SafeText.OneLine(row.Measure.Title), TitleColumns - unit.Length).TrimEnd() + unit;
        string values = string.Concat(row.Values.Select(value => (value is double number ? Cell(row.Measure, number) : ".").PadLeft(ValueColumns)).TakeLast(shown));
        return $"{title.PadRight(TitleColumns)}{values} {row.Last?.Mark}".TrimEnd();
    }

    // The unit stands beside the title.
    private static string Cell(Measure measure, double value) => measure.Id == MeasureIds.Effusion ? MeasureText.Shown(measure, value) : Number.Text(value, 2);

    private static IEnumerable<string> Told(ComparisonRow row, int width)
    {
        if (row.Last is not { } last)
        {
            return [];
        }

        string detectable = last.Detectable is double least ? $"; detectable from {MeasureText.Amount(last.Measure, least)}" : "";
        string sentence = $"{last.Mark} {last.Measure.Title}: {last.Words}. {MeasureText.Shown(last.Measure, last.Old)} ({last.From:yyyy-MM-dd}) to {MeasureText.Shown(last.Measure, last.New)} ({last.To:yyyy-MM-dd}), {Number.Signed(last.Difference, 2)}{detectable}."
            + (last.WhyNot is { } why ? $" Not classed: {why}." : "");
        return [.. Wrapped(sentence, width), .. last.Notes.SelectMany(note => Wrapped(note, width - 4).Select(text => "    " + text))];
    }

    private static IReadOnlyList<string> Wrapped(string text, int width) => TextFit.Wrap(SafeText.OneLine(text), width);
}
