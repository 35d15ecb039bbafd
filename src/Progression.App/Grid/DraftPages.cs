using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>The question about a kept draft, and its comparison with what is saved.</summary>
internal static class DraftPages
{
    private const int Place = 26;
    private const int Choice = 10;

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
        int half = (room.Width - Place - (plan ? Choice : 0) - 4) / 2;
        string[][] lines = plan ? [.. GridDrafts.Cells(state).Select(cell => Words(state, cell))] : [.. state.Offers[0].Lines.Select(line => new[] { line.Place, Shown(line.Before), Shown(line.Draft) })];
        int shown = Math.Max(1, room.Height - 1);
        int first = Paging.First(state.DraftLine, shown, lines.Length);
        List<PictureRow> rows = [Row(plan ? ["Cell", "Plan now", "Draft", "Taken"] : ["Line", "Before", "Typed"], half, Ink.Strong)];
        rows.AddRange(lines.Skip(first).Take(shown).Select((line, at) => Row(line, half, first + at == state.DraftLine ? Ink.Chosen : Ink.Plain)));
        return new([.. rows], lines.Length == 0 ? null : new CaretAt(0, 1 + state.DraftLine - first));
    }

    private static string[] Words(GridState state, MergeCell cell)
    {
        Lane? lane = state.Plan.LaneOf(cell.Address.Lane) ?? state.Offers[0].Plan!.LaneOf(cell.Address.Lane);
        string choice = cell.Standing == MergeStanding.Closed ? "cannot be" : GridDrafts.IsTaken(state, cell) switch { true => "draft", false => "now", _ => "? choose" };
        return [$"{lane?.Title ?? cell.Address.Lane}, week {cell.Address.Week}", Content(state, lane, cell.Now), Content(state, lane, cell.Draft), choice];
    }

    private static string Content(GridState state, Lane? lane, PlanCell? cell) =>
        (cell?.Content is { } content && lane is not null ? CellNotation.Text(lane, content, state.Desk.Library) : "empty") + (cell is { IsPinned: true } ? " *" : "");

    private static string Shown(string text) => text.Length == 0 ? "empty" : text;

    private static PictureRow Row(string[] cells, int half, Ink ink)
    {
        ImmutableArray<int> widths = [Place, half, half, Choice];
        return PictureRow.Of(string.Join(' ', cells.Select((cell, at) => TextFit.Exactly(cell, widths[at]))), ink);
    }
}
