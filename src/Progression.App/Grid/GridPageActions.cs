using Progression.App.Actions;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>The rows of the grid's table for the modes in which the keys mean something else than moving over the grid.</summary>
internal static class GridPageActions
{
    public static IEnumerable<ScreenAction<GridState>> All =>
    [
        .. Typing("take what is typed").In(GridMode.Edit, "Typing a cell"),
        .. Typing("take the reason").In(GridMode.Reason, "Typing a reason"),
        .. Typing("fill so many weeks on; nothing typed is all").In(GridMode.Fill, "Filling on"),
        .. Days().In(GridMode.Days, "The days of a week"),
        .. Findings().In(GridMode.Findings, "Findings"),
        .. Why().In(GridMode.Why, "Reading the answer"),
        .. Help().In(GridMode.Help, "Reading the help"),
        .. GridDraftActions.All,
        .. GridReviewActions.All,
        .. GridConflictActions.All,
    ];

    private static IEnumerable<ScreenAction<GridState>> Typing(string take) =>
    [
        HelpOn(["F1"]),
        Does("take", ["Enter"], take, GridTyping.HandIn).Hinted(2, "take"),
        Shows("cancel", ["Esc"], "leave the cell as it was", GridTyping.Cancel).Hinted(3, "cancel").AsBack(),
        .. CommonRows.Typing<GridState>(GridTyping.With),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Findings() =>
    [
        HelpOn(["F1", "?"]),
        Shows("next", ["Down", "j"], "the finding below", state => GridFindings.Choose(state, state.FindingIndex + 1) with { Scroll = 0 }).Hinted(7, "below"),
        Shows("before", ["Up", "k"], "the finding above", state => GridFindings.Choose(state, state.FindingIndex - 1) with { Scroll = 0 }).Hinted(8, "above"),
        Shows("first", ["Home"], "the worst finding", state => GridFindings.Choose(state, 0) with { Scroll = 0 }),
        Shows("last", ["End"], "the last finding", state => GridFindings.Choose(state, state.Findings.Length) with { Scroll = 0 }),
        Shows("go", ["Enter"], "its first cell in the grid", GridFindings.Go).Hinted(2, "go to cell").Unless(GridFindings.WhyNotGo),
        Shows("cell-on", ["Right", "l"], "its next cell", state => GridFindings.Along(state, 1)).Hinted(4, "next cell").Unless(GridFindings.WhyNotGo),
        Shows("cell-back", ["Left", "h"], "its cell before", state => GridFindings.Along(state, -1)).Unless(GridFindings.WhyNotGo),
        Does("cure", ["c"], "do what it offers as its cure", state => GridEdits.Cure(state, GridFindings.Chosen(state)!.Cure!))
            .Hinted(3, "cure").Unless(state => GridEdits.WhyNotCure(state, GridFindings.Chosen(state))),
        Does("undo", ["u", "Ctrl+Z"], "take the last change back", state => GridEdits.Undo(state)).Hinted(6, "undo")
            .Unless(state => state.Done.IsEmpty ? "There is nothing to undo." : null),
        Shows("read-on", ["]", "PgDn"], "read on below the list", state => GridScroll.By(state, 3)),
        Shows("read-back", ["[", "PgUp"], "read back", state => GridScroll.By(state, -3)),
        Back(["Esc", "f", "q"]),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Days() =>
    [
        HelpOn(["F1", "?"]),
        Shows("week-before", ["Left", "h"], "the week before", state => GridMoves.To(state, state.LaneIndex, state.Week - 1)).Hinted(2, "week before"),
        Shows("week-after", ["Right", "l"], "the week after", state => GridMoves.To(state, state.LaneIndex, state.Week + 1)).Hinted(3, "week after"),
        Shows("present", ["t"], "the present week", state => GridMoves.To(state, state.LaneIndex, state.PresentWeek)).Hinted(4, "present week"),
        Shows("first", ["Home"], "the first week", state => GridMoves.To(state, state.LaneIndex, 1)),
        Shows("last", ["End"], "the last week", state => GridMoves.To(state, state.LaneIndex, state.Plan.Weeks)),
        Shows("on", ["Down", "j", "PgDn", "]"], "read on", state => GridScroll.By(state, 1)),
        Shows("up", ["Up", "k", "PgUp", "["], "read back", state => GridScroll.By(state, -1)),
        Back(["Esc", "d", "q"]),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Why() => [HelpOn(["F1", "?"]), .. CommonRows.Reading<GridState>(GridScroll.By), GridDoors.Library(), Back(["Esc", "w", "q"]), CommonRows.Repaint<GridState>()];

    private static IEnumerable<ScreenAction<GridState>> Help() => CommonRows.Help<GridState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, GridScroll.By);

    internal static ScreenAction<GridState> HelpOn(string[] keys) =>
        Shows("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = GridMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ScreenAction<GridState> Back(string[] keys) =>
        Shows("back", [.. keys], "back to the grid", state => state with { Mode = GridMode.Grid, Scroll = 0, Status = "" }).Hinted(5, "back").AsBack();
}
