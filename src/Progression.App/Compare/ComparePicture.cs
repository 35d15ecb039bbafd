using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.App.Compare;

/// <summary>Lays out the comparison: a row for each measure, a column for each visit, what changed, and why of the row under the cursor.</summary>
public static class ComparePicture
{
    private const int PaneUnder = 7;

    /// <summary>Stands where nothing was measured; never a zero.</summary>
    public const string NotMeasured = "–";

    private static readonly string[] Legend =
    [
        "Marks",
        "  + - ~                   improved, worse, no detectable change",
        "  ! ?                     possible worsening, not classed",
        "  ↑ ↓                     before a name: more is better, less is better",
        "  –                       not measured; it is never taken for zero",
        "  ▁▄█ ·                   the values so far, better is up; not measured",
        "No detectable change is not the same as no change: error alone could do it.",
    ];

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(CompareState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode switch
        {
            CompareMode.Help => ScrolledText.Of([.. HelpLines(state).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, room),
            CompareMode.Why => ScrolledText.Of(WhyLines(state, room.Width), state.Scroll, room),
            _ => Table(state, room),
        };
        return ScreenSheet.Of(CompareScreen.Where(state), body, (state.Status, CompareActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(CompareState state) => [.. CompareActions.Table.HelpPage(state.HelpFor.ToString()), .. Legend];

    /// <summary>What the row under the cursor rests on.</summary>
    internal static IReadOnlyList<PictureRow> WhyLines(CompareState state, int width) =>
        state.Chosen is { } row ? [.. ChangeText.Lines(row, width), .. TextLines.Wrapped(state.Comparison.FalseAlarm, width, Ink.Quiet)] : [];

    private static Picture Table(CompareState state, PictureSize room)
    {
        if (state.Chosen is not { } chosen)
        {
            return new([PictureRow.Empty, PictureRow.Of("Nothing has been measured yet.")]);
        }

        CompareShape shape = CompareShape.Of(state, room.Width);
        List<PictureRow> alarm = [.. state.Comparison.FalseAlarm.Length == 0 ? [] : TextLines.Wrapped(state.Comparison.FalseAlarm, room.Width, Ink.Quiet)];
        PictureSize pane = new(room.Width, room.Height >= 30 ? room.Height / 3 : PaneUnder);
        int shown = room.Height - 2 - alarm.Count - 1 - pane.Height;
        int first = Paging.First(state.Index, shown, state.Comparison.Rows.Length);
        IEnumerable<PictureRow> rows = state.Comparison.Rows.Skip(first).Take(shown)
            .Select((row, at) => Row(row, shape, first + at == state.Index).Fit(room.Width));
        Picture upper = new Picture([.. Head(state, shape), .. rows]).Fit(new(room.Width, 2 + shown));
        IEnumerable<PictureRow> lower = ScrolledText.Of(ChangeText.Lines(chosen, pane.Width), state.Scroll, pane).Rows;
        return new([.. upper.Rows, .. alarm, TextLines.Rule(room.Width), .. lower], new CaretAt(0, 2 + state.Index - first));
    }

    private static IEnumerable<PictureRow> Head(CompareState state, CompareShape shape)
    {
        string older = shape.Visits.Length > 1 && shape.Visits[0] > 0 ? $"← {shape.Visits[0]} older" : "";
        string hidden = shape.Visits.Length > 1 && shape.Visits[^2] < shape.Visits[^1] - 1 ? $" {shape.Visits[^1] - shape.Visits[^2] - 1} between →" : "";
        string weeks = string.Concat(shape.Visits.Select(visit => state.Week(visit).PadLeft(CompareShape.Visit)));
        string days = string.Concat(shape.Visits.Select(visit => CaseTitle.ShortDay(state.Comparison.Visits[visit]).PadLeft(CompareShape.Visit)));
        yield return PictureRow.Of(TextFit.Exactly(older + hidden, shape.Name) + TextFit.Exactly("better", shape.Trend) + weeks
            + new string(' ', CompareShape.Gap) + TextFit.Exactly("last change", shape.Change) + (shape.ShowsFirst ? TextFit.Exactly("since the first", shape.Change) : ""), Ink.Strong);
        yield return PictureRow.Of(TextFit.Exactly("", shape.Name) + TextFit.Exactly("is up", shape.Trend) + days, Ink.Quiet);
    }

    private static PictureRow Row(ComparisonRow row, CompareShape shape, bool chosen)
    {
        bool up = MeasureLabel.IsHigherBetter(row.Measure);
        string name = TextFit.Longest([$"{(up ? '↑' : '↓')} {MeasureLabel.Name(row.Measure)}"], shape.Name - 1) + " ";
        string trend = Sparkline.Of([.. row.Values.TakeLast(shape.Trend - 1)], up);
        string values = string.Concat(shape.Visits.Select(visit => Value(row.Measure, row.Values[visit]).PadLeft(CompareShape.Visit)));
        return new(
        [
            new(name, chosen ? Ink.Chosen : Ink.Plain),
            new(TextFit.Exactly(trend, shape.Trend), Ink.Milestone),
            new(values + new string(' ', CompareShape.Gap)),
            Change(row.Last, shape.Change),
            .. shape.ShowsFirst ? [Change(row.SinceFirst, shape.Change)] : Array.Empty<TextSpan>(),
        ]);
    }

    private static TextSpan Change(Change? change, int width) => change is null
        ? new(TextFit.Exactly("", width))
        : new(TextFit.Longest(ChangeText.Brief(change), width), ChangeText.InkOf(change));

    private static string Value(Measure measure, double? value) => value is double known ? MeasureLabel.Value(measure, known) : NotMeasured;
}
