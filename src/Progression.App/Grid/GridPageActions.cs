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
        .. Findings().In(GridMode.Findings, "Findings"),
        .. Why().In(GridMode.Why, "Reading the answer"),
        .. Help().In(GridMode.Help, "Reading the help"),
        .. Draft().In(GridMode.Draft, "A draft was kept"),
    ];

    private static IEnumerable<ScreenAction<GridState>> Typing(string take) =>
    [
        HelpOn(["F1"]),
        Does("take", ["Enter"], take, GridTyping.HandIn).Hinted(2, "take"),
        Shows("cancel", ["Esc"], "leave the cell as it was", GridTyping.Cancel).Hinted(3, "cancel"),
        Shows("empty", ["Ctrl+U"], "empty the line", state => GridTyping.With(state, _ => LineEntry.Empty)).Hinted(4, "empty line"),
        Shows("start", ["Home", "Ctrl+A"], "the start of the line", state => GridTyping.With(state, line => line.Start())).Hinted(5, "start"),
        Shows("end", ["End", "Ctrl+E"], "the end of the line", state => GridTyping.With(state, line => line.End())).Hinted(6, "end"),
        Shows("left", ["Left"], "one letter left", state => GridTyping.With(state, line => line.Left())),
        Shows("right", ["Right"], "one letter right", state => GridTyping.With(state, line => line.Right())),
        Shows("rub-out", ["Backspace"], "rub out the letter before", state => GridTyping.With(state, line => line.RubOut())),
        Shows("delete", ["Delete"], "delete the letter at the cursor", state => GridTyping.With(state, line => line.Delete())),
        GridActions.Repaint(),
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
        GridActions.Repaint(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Why() => [HelpOn(["F1", "?"]), .. Scrolling(), GridDoors.Library(), Back(["Esc", "w", "q"]), GridActions.Repaint()];

    private static IEnumerable<ScreenAction<GridState>> Help() =>
    [
        Shows("close", ["F1", "?", "Esc", "q"], "back to where you were", state => state with { Mode = state.HelpFor, Scroll = 0 }).Hinted(1, "close help"),
        .. Scrolling(),
        GridActions.Repaint(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Draft() =>
    [
        HelpOn(["F1", "?"]),
        Does("go-on", ["g", "Enter"], "go on with the kept changes; undo drops them", GridEdits.TakeUpDraft).Hinted(2, "go on"),
        Does("drop", ["x"], "drop the kept changes and take the saved plan", state =>
            Step.To(state with { Draft = null, Mode = GridMode.Grid, Status = "The draft was dropped." }, new DropDraft())).Hinted(3, "drop"),
        GridActions.Quit("leave and decide later").Hinted(4, "quit"),
        GridActions.Repaint(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Scrolling() =>
    [
        Shows("on", ["Down", "j", "]"], "read on", state => GridScroll.By(state, 1)).Hinted(2, "read on"),
        Shows("back-up", ["Up", "k", "["], "read back", state => GridScroll.By(state, -1)).Hinted(3, "read back"),
        Shows("page-on", ["PgDn", "Space"], "a page on", state => GridScroll.By(state, 15)).Hinted(4, "page"),
        Shows("page-back", ["PgUp"], "a page back", state => GridScroll.By(state, -15)),
        Shows("top", ["Home"], "the start", state => state with { Scroll = 0 }).Hinted(5, "start"),
    ];

    private static ScreenAction<GridState> HelpOn(string[] keys) =>
        Shows("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = GridMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ScreenAction<GridState> Back(string[] keys) =>
        Shows("back", [.. keys], "back to the grid", state => state with { Mode = GridMode.Grid, Scroll = 0, Status = "" }).Hinted(5, "back");
}
