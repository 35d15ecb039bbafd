using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Pictures;

namespace Progression.App.Grid;

/// <summary>The pages of the grid in words: a kept draft in question, its comparison, the days of a week.</summary>
internal static class PageAloud
{
    public static IEnumerable<string> Draft(GridState state) => RowWords.Of(DraftPages.Question(state, new(RowWords.Unbroken, 1)).Rows);

    public static IEnumerable<string> DraftLine(GridState state)
    {
        (ImmutableArray<string> titles, ImmutableArray<ImmutableArray<string>> lines) = DraftPages.Lines(state);
        return lines.IsEmpty ? ["The draft has no change."] : [$"{state.DraftLine + 1} of {lines.Length}. {Line(titles, lines[Math.Clamp(state.DraftLine, 0, lines.Length - 1)])}"];
    }

    public static IEnumerable<string> DraftLines(GridState state)
    {
        (ImmutableArray<string> titles, ImmutableArray<ImmutableArray<string>> lines) = DraftPages.Lines(state);
        return lines.Select(line => Line(titles, line));
    }

    public static IEnumerable<string> Days(GridState state) =>
    [
        $"The days of week {state.Week} of {state.Plan.Weeks}.",
        .. GridDays.Told(state).Select(work => $"{work.Title}: {Each(GridDays.DaysOf(state), work.Cells)}."),
        .. GridDays.Goals(state).Select(goal => $"Goal: {goal}."),
    ];

    private static string Line(ImmutableArray<string> titles, ImmutableArray<string> line) =>
        string.Join(' ', titles.Zip(line).Select(part => $"{part.First}: {part.Second}."));

    private static string Each(ImmutableArray<DateOnly> days, ImmutableArray<string> cells) => cells.All(cell => cell.Length == 0) ? "no day"
        : cells.Distinct().Count() == 1 ? $"every day {Said(cells[0])}"
        : string.Join(", ", days.Zip(cells).Where(day => day.Second.Length > 0).Select(day => $"{day.First.ToString("dddd d MMM", CultureInfo.InvariantCulture)} {Said(day.Second)}"));

    // The short forms of the picture: 2x, 1/2, -/2, +1.
    private static string Said(string cell) => cell switch
    {
        "·" => "before the plan's first day",
        "yes" => "yes",
        ['+', .. var done] => $"{done} done, not planned",
        ['-', '/', .. var due] => $"nothing logged of {due}",
        [.. var due, 'x'] => due == "1" ? "once" : $"{due} times",
        _ => cell.Replace("/", " of ", StringComparison.Ordinal) + (cell.Contains('/', StringComparison.Ordinal) ? " done" : ""),
    };
}
