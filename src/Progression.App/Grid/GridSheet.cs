using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Pictures;
using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Draws the grid itself: two header lines, then bands of lanes by weeks. On a screen and on paper the same.</summary>
public static class GridSheet
{
    /// <summary>Lines of the header.</summary>
    public const int HeaderLines = 2;

    private const char PinMark = '*';
    private const char CommentMark = '"';
    private const char PinAndCommentMark = '#';
    private const int OverlapLines = 2;
    private const int LeastMarked = 10;

    /// <summary>The part of the grid around the cursor, header included, and where the cursor stands in it.</summary>
    /// <param name="state">The grid.</param>
    /// <param name="size">The room, header included.</param>
    public static Picture Around(GridState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        SheetShape shape = SheetShape.Of(state, size.Width);
        int shown = Math.Max(1, size.Height - HeaderLines);
        int cursor = shape.Lines.IndexOf(shape.Lines.First(line => line.LaneIndex == state.LaneIndex && line.HasCells));
        int first = Paging.First(cursor, shown, shape.Lines.Length, OverlapLines);
        IEnumerable<PictureRow> lines = shape.Lines.Skip(first).Take(shown).Select(line => Line(state, shape, line, withCursor: true));
        CaretAt caret = new(shape.NameWidth + 1 + ((state.Week - shape.FirstWeek) * (shape.CellWidth + 1)), HeaderLines + cursor - first);
        return new([.. Header(state, shape, MoreLines(first, shown, shape.Lines.Length)), .. lines], caret);
    }

    /// <summary>The whole grid for paper or a pipe: every lane, and the weeks in as many blocks as the width asks for.</summary>
    /// <param name="state">The grid; its cursor does not matter.</param>
    /// <param name="width">columns.</param>
    public static Picture Whole(GridState state, int width)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, GridText.Narrowest);
        List<PictureRow> rows = [];
        for (int week = 1; week <= state.Plan.Weeks;)
        {
            SheetShape shape = SheetShape.Of(state with { Week = week }, width) with { FirstWeek = week };
            shape = shape with { Weeks = Math.Min(shape.Weeks, state.Plan.Weeks - week + 1) };
            rows.AddRange(week > 1 ? [PictureRow.Empty] : []);
            rows.AddRange(Header(state, shape, ""));
            rows.AddRange(shape.Lines.Select(line => Line(state, shape, line, withCursor: false)));
            week += shape.Weeks;
        }
        return new([.. rows]);
    }

    private static ImmutableArray<PictureRow> Header(GridState state, SheetShape shape, string more)
    {
        List<TextSpan> numbers = [new(TextFit.Exactly(WeeksShown(state, shape), shape.NameWidth), Ink.Quiet)];
        List<TextSpan> dates = [new(TextFit.Exactly(more, shape.NameWidth), Ink.Quiet)];
        for (int week = shape.FirstWeek; week < shape.FirstWeek + shape.Weeks; week++)
        {
            bool present = week == state.PresentWeek;
            Ink ink = present ? Ink.Today : week < state.Plan.FirstOpenWeek ? Ink.Quiet : Ink.Strong;
            string number = present ? TextFit.Longest([$"week {week} ▼ now", $"wk {week} ▼now"], shape.CellWidth) : TextFit.Exactly($"week {week}", shape.CellWidth);
            numbers.AddRange([new("│", Ink.Quiet), new(number, ink)]);
            dates.AddRange([new("│", Ink.Quiet), new(TextFit.Longest(Dates(state.Plan, week), shape.CellWidth), present ? Ink.Today : Ink.Quiet)]);
        }
        return [new([.. numbers]), new([.. dates])];
    }

    private static PictureRow Line(GridState state, SheetShape shape, SheetLine line, bool withCursor)
    {
        Lane lane = state.Plan.Lanes[line.LaneIndex];
        int width = shape.NameWidth + (shape.Weeks * (shape.CellWidth + 1));
        if (line.Part == SheetPart.Barred)
        {
            string barred = $"{FindingWords.Mark(Severity.Stop)} barred. {string.Join(" ", state.Plan.StimBarred)}";
            string band = BandWords.Title(Band.Stim).ToUpperInvariant() + " ";
            return new([new(band, BandWords.InkOf(Band.Stim)), new(TextFit.Exactly(barred, width - band.Length), FindingWords.InkOf(Severity.Stop))]);
        }

        if (line.Part == SheetPart.Heading)
        {
            string name = BandWords.Title(lane.Band).ToUpperInvariant() + " ";
            int rest = width - name.Length;
            return new([new(name, BandWords.InkOf(lane.Band)), new(new string('─', Math.Max(0, rest)), Ink.Quiet)]);
        }
        string title = line.Part == SheetPart.Lower ? "" : shape.FullNames ? lane.Title : lane.Short;
        List<TextSpan> spans = [new(TextFit.Exactly(title, shape.NameWidth))];
        bool here = withCursor && line.LaneIndex == state.LaneIndex;
        for (int week = shape.FirstWeek; week < shape.FirstWeek + shape.Weeks; week++)
        {
            spans.Add(state.IsMarked(new(lane.Id, week)) ? new("▸", Ink.Warning) : new("│", Ink.Quiet));
            IEnumerable<TextSpan> cell = Cell(state, new(lane.Id, week), line.Part, shape.CellWidth);
            spans.AddRange(here && week == state.Week ? Chosen(cell) : cell);
        }
        return new([.. spans]);
    }

    // In a wide cell only its text is marked: what a step of the cursor sends grows with it.
    private static IEnumerable<TextSpan> Chosen(IEnumerable<TextSpan> cell)
    {
        ImmutableArray<TextSpan> spans = [.. cell];
        string text = string.Concat(spans.Select(span => span.Text));
        int marked = Math.Min(text.Length, Math.Max(LeastMarked, text.TrimEnd().Length + 1));
        return [new(text[..marked], Ink.Chosen), new(text[marked..], spans[^1].Ink)];
    }

    private static IEnumerable<TextSpan> Cell(GridState state, CellAddress address, SheetPart part, int width)
    {
        Lane lane = state.Plan.LaneOf(address.Lane)!;
        CellWords words = CellWords.Of(state, lane, address.Week);
        Ink ink = BandWords.InkOf(lane.Band);
        if (address.Week < state.Plan.FirstWeek && words.Whole is [""])
        {
            // Before the plan's first day: done is done, nothing is planned here.
            return [new(TextFit.Exactly(part == SheetPart.Lower ? "" : " ·", width), Ink.Quiet)];
        }
        if (part != SheetPart.Whole && words.Upper.IsEmpty)
        {
            words = Broken(words.Whole[0], width - 2);
        }
        if (part == SheetPart.Upper)
        {
            return [new(TextFit.Longest([.. words.Upper.Select(name => " " + name), words.Upper[^1]], width), ink)];
        }
        Finding? worst = state.FindingsOn(address).FirstOrDefault();
        return
        [
            worst is null ? new(" ", ink) : new($"{FindingWords.Mark(worst.Severity)}", FindingWords.InkOf(worst.Severity)),
            new(TextFit.Longest(part == SheetPart.Lower ? words.Lower : words.Whole, width - 2), ink),
            new(Mark(state, address), ink),
        ];
    }

    private static string Mark(GridState state, CellAddress address) => (state.Plan.At(address) is { IsPinned: true }, state.Review?.On(address).Any() == true) switch
    {
        (true, true) => $"{PinAndCommentMark}",
        (true, _) => $"{PinMark}",
        (_, true) => $"{CommentMark}",
        _ => " ",
    };

    /// <summary>Free text over two lines.</summary>
    private static CellWords Broken(string text, int width)
    {
        IReadOnlyList<string> lines = TextFit.Wrap(text, width);
        return new([text], [lines[0]], [string.Join(' ', lines.Skip(1))]);
    }

    private static string WeeksShown(GridState state, SheetShape shape) => shape.Weeks == state.Plan.Weeks
        ? ""
        : $"{shape.FirstWeek} to {shape.FirstWeek + shape.Weeks - 1} of {state.Plan.Weeks}";

    private static string MoreLines(int first, int shown, int total) => (first > 0, first + shown < total) switch
    {
        (true, true) => "more ↑ ↓",
        (true, false) => "more ↑",
        (false, true) => "more ↓",
        _ => "",
    };

    private static string[] Dates(PlanRevision plan, int week)
    {
        DateOnly start = PostOpWeek.Start(plan.Operation, week), end = PostOpWeek.End(plan.Operation, week);
        string last = end.ToString("d MMM", CultureInfo.InvariantCulture);
        return start.Month == end.Month
            ? [$"{start.Day}–{last}"]
            : [$"{start.ToString("d MMM", CultureInfo.InvariantCulture)}–{last}", string.Create(CultureInfo.InvariantCulture, $"{start:dMMM}–{end:dMMM}")];
    }
}
