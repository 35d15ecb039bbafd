using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Core.Notes;

/// <summary>What changed between the last two readings and since the first, each with its class and the error it was held against.</summary>
internal static class NoteChanges
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        Comparison all = Comparison.Of(order.Patient, order.Library);
        ImmutableArray<Change> last = [.. all.Rows.Select(row => row.Last).OfType<Change>()];
        ImmutableArray<Change> first = [.. all.Rows.Where(row => row.SinceFirst is { } since && since.From != row.Last?.From).Select(row => row.SinceFirst!)];
        yield return new Block.Heading(2, "What changed");
        if (last.IsEmpty)
        {
            yield return new Block.Paragraph(all.Rows.IsEmpty ? "Nothing was measured." : "No measure has two readings since the operation.");
        }
        else
        {
            yield return new Block.Paragraph($"Last two readings since the operation; detectable at {Number.Text(last[0].LevelPercent)} %. Error is the standard error of the older and the newer reading.");
            yield return Table(last);
        }

        if (!first.IsEmpty)
        {
            yield return new Block.Paragraph("First reading since the operation against the newest.");
            yield return Table(first);
        }

        ImmutableArray<string> notes = [.. last.SelectMany(Notes).Distinct(), .. all.FalseAlarm.Length > 0 ? new[] { all.FalseAlarm } : []];
        if (!notes.IsEmpty)
        {
            yield return new Block.Points(notes, InOrder: false);
        }
    }

    private static Block.Table Table(ImmutableArray<Change> changes) =>
        new(["Measure", "From", "To", "Change", "Detectable", "Error", "Class"], [.. changes.Select(Row)]);

    private static ImmutableArray<string> Row(Change change) =>
    [
        change.Measure.Title,
        $"{MeasureText.Shown(change.Measure, change.Old)} on {NoteOrder.Day(change.From)}",
        $"{MeasureText.Shown(change.Measure, change.New)} on {NoteOrder.Day(change.To)}",
        Number.Signed(change.Difference, 2),
        change.Detectable is double least ? MeasureText.Amount(change.Measure, least) : "not known",
        Error(change),
        change.Words,
    ];

    private static string Error(Change change) => change switch
    {
        { ErrorOld: double old, ErrorNew: double now } when change.Measure.Scale == ErrorScale.Logarithmic => $"{Number.Text(100 * old, 1)} and {Number.Text(100 * now, 1)} %",
        { ErrorOld: double old, ErrorNew: double now } => $"{Number.Text(old, 2)} and {MeasureText.Amount(change.Measure, now)}",
        _ when change.Measure.Scale == ErrorScale.Ordinal => "counted in steps",
        _ => "not known",
    };

    private static IEnumerable<string> Notes(Change change) =>
    [
        .. change.WhyNot is { } why ? new[] { $"{change.Measure.Title}: not classed, {why}." } : [],
        .. change.Notes.Select(note => $"{change.Measure.Title}: {note}."),
    ];
}
