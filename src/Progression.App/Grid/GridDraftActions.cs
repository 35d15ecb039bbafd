using Progression.App.Actions;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>The rows of the grid's table while a kept draft is in question.</summary>
internal static class GridDraftActions
{
    private const int Page = 10;

    public static IEnumerable<ScreenAction<GridState>> All =>
    [
        .. Question().In(GridMode.Draft, "A draft was kept"),
        .. Comparing().In(GridMode.Compare, "Comparing a kept draft"),
    ];

    private static IEnumerable<ScreenAction<GridState>> Question() =>
    [
        GridPageActions.HelpOn(["F1", "?"]),
        Recover("Enter"),
        Shows("compare", ["c"], "see each change beside what is saved", state => GridDrafts.Choose(state, 0) with { Mode = GridMode.Compare }).Hinted(3, "compare"),
        Discard(),
        Shows("later", ["Esc"], "to the grid; the draft waits", GridDrafts.Later).Hinted(5, "later").AsBack(),
        GridActions.Quit("leave; the draft waits").Hinted(6, "quit"),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Comparing() =>
    [
        GridPageActions.HelpOn(["F1", "?"]),
        Recover(),
        Shows("choose", ["Space"], "the draft's or what is saved, for this cell", GridDrafts.Toggle).Hinted(3, "choose").Unless(GridDrafts.WhyNotToggle),
        Discard(),
        Shows("down", ["Down", "j"], "the change below", state => GridDrafts.Choose(state, state.DraftLine + 1)).Hinted(6, "below"),
        Shows("up", ["Up", "k"], "the change above", state => GridDrafts.Choose(state, state.DraftLine - 1)),
        Shows("page-down", ["PgDn"], "a page down", state => GridDrafts.Choose(state, state.DraftLine + Page)),
        Shows("page-up", ["PgUp"], "a page up", state => GridDrafts.Choose(state, state.DraftLine - Page)),
        Shows("first", ["Home"], "the first change", state => GridDrafts.Choose(state, 0)),
        Shows("last", ["End"], "the last change", state => GridDrafts.Choose(state, GridDrafts.Count(state))),
        Shows("back", ["Esc", "c", "q"], "back to the question", GridDrafts.Open).Hinted(5, "back").AsBack(),
        CommonRows.Repaint<GridState>(),
    ];

    private static ScreenAction<GridState> Recover(params string[] keys) =>
        Does("recover", ["r", .. keys], "go on with what was kept", GridDrafts.Recover).Hinted(2, "recover").Unless(GridDrafts.WhyNotRecover);

    private static ScreenAction<GridState> Discard() => Does("discard", ["x"], "drop what was kept", GridDrafts.Discard).Hinted(4, "discard");
}
