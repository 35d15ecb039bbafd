using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Both sides of a plan that two people changed: a line for each cell, and the one under the cursor in full.</summary>
internal static class ConflictPages
{
    private const int Place = 26;
    private const int Taken = 10;
    private const int Whole = 7;

    private static readonly ImmutableArray<string> Titles = ["Cell", "Before", "Theirs", "Mine", "Taken"];

    public static Picture Draw(GridState state, PictureSize room)
    {
        PlanConflict conflict = state.Conflict!;
        ImmutableArray<ForkedCell> cells = GridConflicts.Cells(state);
        List<PictureRow> head = [.. Head(state).SelectMany(text => TextLines.Wrapped(SafeText.OneLine(text), room.Width, Ink.Strong))];
        int third = (room.Width - Place - Taken - 4) / 3;
        int shown = Math.Max(1, room.Height - head.Count - 1 - Whole);
        int chosen = Math.Clamp(conflict.Line, 0, Math.Max(0, cells.Length - 1));
        int first = Paging.First(chosen, shown, cells.Length);
        List<PictureRow> rows = [.. head, Row(Titles, third, Ink.Strong)];
        rows.AddRange(cells.Skip(first).Take(shown).Select((cell, at) => Row(Words(state, cell), third, first + at == chosen ? Ink.Chosen : Ink.Plain)));
        rows.AddRange(Enumerable.Repeat(PictureRow.Empty, Math.Max(0, head.Count + 1 + shown - rows.Count)));
        rows.Add(TextLines.Rule(room.Width));
        rows.AddRange(cells.IsEmpty ? [] : Titles.Zip(Words(state, cells[chosen])).SelectMany(part => TextLines.Labelled(part.First, part.Second, room.Width)).Take(Whole - 1));
        return new([.. rows], cells.IsEmpty ? null : new CaretAt(0, head.Count + 1 + chosen - first));
    }

    public static IEnumerable<string> Aloud(GridState state) =>
    [
        .. Head(state),
        .. GridConflicts.Chosen(state) is { } cell ? [$"{GridConflicts.Cells(state).IndexOf(cell) + 1} of {GridConflicts.Cells(state).Length}. {Line(state, cell)}"] : new[] { "No cell differs." },
    ];

    public static IEnumerable<string> AloudAll(GridState state) => [.. Head(state), .. GridConflicts.Cells(state).Select(cell => Line(state, cell))];

    private static IEnumerable<string> Head(GridState state)
    {
        PlanConflict conflict = state.Conflict!;
        yield return conflict.Saved;
        if (PlanFork.HaveOtherFrames(conflict.Base, state.Plan) && PlanFork.HaveOtherFrames(state.Plan, conflict.Theirs))
        {
            yield return "Your plan differs in more than cells (weeks, regimen, first day): those stay as they saved them.";
        }
    }

    private static string Line(GridState state, ForkedCell cell) => string.Join(' ', Titles.Zip(Words(state, cell)).Select(part => $"{part.First}: {part.Second}."));

    private static ImmutableArray<string> Words(GridState state, ForkedCell cell)
    {
        Lane? lane = state.Conflict!.Theirs.LaneOf(cell.Address.Lane) ?? state.Plan.LaneOf(cell.Address.Lane);
        string taken = cell.Side == ForkSide.Closed ? "theirs, past" : GridConflicts.IsMine(state.Conflict, cell) switch { true => "mine", false => "theirs", _ => "? choose" };
        return [$"{lane?.Title ?? cell.Address.Lane}, week {cell.Address.Week}", Content(state, lane, cell.Base), Content(state, lane, cell.Theirs), Content(state, lane, cell.Mine), taken];
    }

    private static string Content(GridState state, Lane? lane, PlanCell? cell) => SafeText.OneLine(
        (cell?.Content is { } content && lane is not null ? CellNotation.Text(lane, content, state.Desk.Library) : "empty") + (cell?.Pin is not { } pin ? "" : pin.Reason is { } reason ? $" * ({reason})" : " *"));

    private static PictureRow Row(ImmutableArray<string> cells, int third, Ink ink)
    {
        ImmutableArray<int> widths = [Place, third, third, third, Taken];
        return PictureRow.Of(string.Join(' ', cells.Select((cell, at) => TextFit.Exactly(cell, widths[at]))), ink);
    }
}
