using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>The question about a kept draft, and its comparison with what is saved.</summary>
internal static class DraftPages
{
    private const int Place = 26;
    private const int Choice = 10;
    private const int Whole = 6;

    public static Picture Question(GridState state, PictureSize room)
    {
        DraftOffer offer = state.Offers[0];
        int count = GridDrafts.Count(state);
        string changes = offer.Plan is null ? count == 1 ? "1 line was typed" : $"{count} lines were typed" : count == 1 ? "1 cell differs from the saved plan" : $"{count} cells differ from the saved plan";
        return new(
        [
            PictureRow.Empty,
            .. TextLines.Wrapped($"Unsaved work was kept: {offer.What} of {state.Plan.Code}; {changes}.", room.Width, Ink.Strong),
            .. TextLines.Wrapped(offer.Kept, room.Width),
            .. offer.Since.Length > 0 ? TextLines.Wrapped(offer.Since, room.Width, Ink.Warning) : [],
            .. GridDrafts.WhyNotRecover(state) is { } open ? TextLines.Wrapped(open, room.Width, Ink.Warning) : [],
            PictureRow.Empty,
            .. TextLines.Wrapped("r recovers it, c compares it first, x drops it for good. Esc leaves it for later.", room.Width),
            .. state.Offers.Length > 1 ? TextLines.Wrapped($"After this one, {(state.Offers.Length == 2 ? "another draft is" : $"{state.Offers.Length - 1} others are")} asked about.", room.Width, Ink.Quiet) : [],
        ]);
    }

    public static Picture Comparison(GridState state, PictureSize room)
    {
        bool plan = state.Offers[0].Plan is not null;
        (ImmutableArray<string> titles, ImmutableArray<ImmutableArray<string>> lines) = Lines(state);
        int half = (room.Width - Place - (plan ? Choice : 0) - titles.Length + 1) / 2;
        int shown = Math.Max(1, room.Height - 1 - Whole);
        int chosen = Math.Clamp(state.DraftLine, 0, Math.Max(0, lines.Length - 1));
        int first = Paging.First(chosen, shown, lines.Length);
        List<PictureRow> rows = [Row(titles, half, Ink.Strong)];
        rows.AddRange(lines.Skip(first).Take(shown).Select((line, at) => Row(line, half, first + at == chosen ? Ink.Chosen : Ink.Plain)));
        rows.AddRange(Enumerable.Repeat(PictureRow.Empty, Math.Max(0, shown + 1 - rows.Count)));
        rows.Add(TextLines.Rule(room.Width));
        // The chosen line in full, because a column may be too narrow for it.
        rows.AddRange(lines.IsEmpty ? [] : titles.Zip(lines[chosen]).Take(3).SelectMany(part => TextLines.Labelled(part.First, part.Second, room.Width)).Take(Whole - 1));
        return new([.. rows], lines.IsEmpty ? null : new CaretAt(0, 1 + chosen - first));
    }

    /// <summary>The changes of the draft in question, with the titles of their columns.</summary>
    public static (ImmutableArray<string> Titles, ImmutableArray<ImmutableArray<string>> Lines) Lines(GridState state) => state.Offers[0].Plan is not null
        ? (["Cell", "Plan now", "Draft", "Taken"], [.. GridDrafts.Cells(state).Select(cell => Words(state, cell))])
        : (["Line", "Before", "Typed"], [.. state.Offers[0].Lines.Select(Words)]);

    private static ImmutableArray<string> Words(DraftText line) => [line.Place, Shown(line.Before), Shown(line.Draft)];

    private static ImmutableArray<string> Words(GridState state, MergeCell cell)
    {
        Lane? lane = state.Plan.LaneOf(cell.Address.Lane) ?? state.Offers[0].Plan!.LaneOf(cell.Address.Lane);
        string choice = cell.Standing == MergeStanding.Closed ? "cannot be" : GridDrafts.IsTaken(state, cell) switch { true => "draft", false => "now", _ => "? choose" };
        return [$"{lane?.Title ?? cell.Address.Lane}, week {cell.Address.Week}", Content(state, lane, cell.Now), Content(state, lane, cell.Draft), choice];
    }

    private static string Content(GridState state, Lane? lane, PlanCell? cell) =>
        (cell?.Content is { } content && lane is not null ? CellNotation.Text(lane, content, state.Desk.Library) : "empty") + (cell?.Pin is not { } pin ? "" : pin.Reason is { } reason ? $" * ({reason})" : " *");

    private static string Shown(string text) => text.Length == 0 ? "empty" : text;

    private static PictureRow Row(ImmutableArray<string> cells, int half, Ink ink)
    {
        ImmutableArray<int> widths = [Place, half, half, Choice];
        return PictureRow.Of(string.Join(' ', cells.Select((cell, at) => TextFit.Exactly(cell, widths[at]))), ink);
    }
}
