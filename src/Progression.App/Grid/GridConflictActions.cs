using Progression.App.Actions;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>The rows of the grid's table while two sides are put together.</summary>
internal static class GridConflictActions
{
    private const int Page = 10;

    public static IEnumerable<ScreenAction<GridState>> All => Rows().In(GridMode.Conflict, "Somebody saved first");

    private static IEnumerable<ScreenAction<GridState>> Rows() =>
    [
        GridPageActions.HelpOn(["F1", "?"]),
        Does("save", ["Ctrl+S", "Enter"], "save what is taken over what they saved", GridConflicts.Save).Hinted(2, "save").Unless(GridConflicts.WhyNotSave),
        Shows("choose", ["Space"], "yours or theirs, for this cell", GridConflicts.Toggle).Hinted(3, "choose").Unless(GridConflicts.WhyNotToggle),
        Shows("mine", ["m"], "yours for every cell", state => GridConflicts.All(state, mine: true)).Hinted(4, "all mine"),
        Shows("theirs", ["t"], "theirs for every cell", state => GridConflicts.All(state, mine: false)).Hinted(5, "all theirs"),
        Shows("back", ["Esc", "q"], "to the grid; yours stays unsaved, kept as a draft", GridConflicts.Leave).Hinted(6, "back").AsBack(),
        Shows("down", ["Down", "j"], "the cell below", state => GridConflicts.Choose(state, state.Conflict!.Line + 1)),
        Shows("up", ["Up", "k"], "the cell above", state => GridConflicts.Choose(state, state.Conflict!.Line - 1)),
        Shows("page-down", ["PgDn"], "a page down", state => GridConflicts.Choose(state, state.Conflict!.Line + Page)),
        Shows("page-up", ["PgUp"], "a page up", state => GridConflicts.Choose(state, state.Conflict!.Line - Page)),
        Shows("first", ["Home"], "the first cell", state => GridConflicts.Choose(state, 0)),
        Shows("last", ["End"], "the last cell", state => GridConflicts.Choose(state, GridConflicts.Cells(state).Length)),
        CommonRows.Repaint<GridState>(),
    ];
}
