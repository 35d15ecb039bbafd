using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.App.Compare;

/// <summary>A change in words: what it is, what would count as one, and what that rests on.</summary>
public static class ChangeText
{
    /// <summary>"+ +14 improved": mark, signed difference and words, in wordings from long to short.</summary>
    public static IReadOnlyList<string> Brief(Change change)
    {
        ArgumentNullException.ThrowIfNull(change);
        string start = $"{change.Mark} {MeasureLabel.Difference(change.Measure, change.Difference)}";
        ImmutableArray<string> wordings = [$"{start} {change.Words}", $"{start} {change.Words.Split(',')[0]}"];
        return change is { Class: ChangeClass.NoDetectableChange, PossiblyWorse: false } ? wordings.Add($"{start} none detectable") : wordings;
    }

    /// <summary>The ink that repeats what the mark says.</summary>
    public static Ink InkOf(Change change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return change.PossiblyWorse ? Ink.Warning : change.Class switch
        {
            ChangeClass.Improved => Ink.Work,
            ChangeClass.Worse => Ink.Stop,
            _ => Ink.Plain,
        };
    }

    /// <summary>Everything to be said of a row, wrapped to a width.</summary>
    public static IReadOnlyList<PictureRow> Lines(ComparisonRow row, int width)
    {
        ArgumentNullException.ThrowIfNull(row);
        List<PictureRow> lines = [.. TextLines.Wrapped($"{MeasureLabel.Name(row.Measure)}: {MeasureLabel.Better(row.Measure)}", width, Ink.Strong)];
        if (row.Values.IsEmpty || row.Values[^1] is null)
        {
            lines.AddRange(TextLines.Wrapped("Not measured at the newest visit.", width));
        }

        if (row.Last is not { } last)
        {
            lines.AddRange(TextLines.Wrapped("Measured once: there is nothing to compare with yet.", width));
            return [.. lines, .. TextLines.Labelled("Source", row.Measure.Source.ToString(), width)];
        }

        lines.AddRange(Told(last, "Last", width));
        if (row.SinceFirst is { } first && (first.From, first.To) != (last.From, last.To))
        {
            lines.AddRange(Told(first, "Since the first", width));
        }

        lines.AddRange(last.Notes.SelectMany(note => TextLines.Labelled("Note", note, width)));
        lines.AddRange(last.Inputs.SelectMany(input => TextLines.Labelled("Input", $"{input.Name}: {input.Value}", width)));
        return [.. lines, .. TextLines.Labelled("Source", last.Source.ToString(), width)];
    }

    private static IEnumerable<PictureRow> Told(Change change, string label, int width)
    {
        string unit = MeasureLabel.Unit(change.Measure);
        string what = $"{CaseTitle.ShortDay(change.From)} {MeasureLabel.Value(change.Measure, change.Old)} → "
            + $"{CaseTitle.ShortDay(change.To)} {MeasureLabel.Value(change.Measure, change.New)}, "
            + $"{MeasureLabel.Difference(change.Measure, change.Difference)}{unit}: {change.Mark} {change.Words}.";
        string level = change.WhyNot is { } why ? why
            : change.Detectable is double least ? $"From here a change counts from {MeasureLabel.Amount(change.Measure, least)}{unit} on, at {Number.Text(change.LevelPercent)} %."
            : "The error of this measure is not known.";
        return TextLines.Labelled(label, $"{what} {level}", width);
    }
}
