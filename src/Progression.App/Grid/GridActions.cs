using Progression.App.Actions;
using Progression.Core.Plans;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>The one table of the grid screen's keys.</summary>
public static class GridActions
{
    /// <summary>The table.</summary>
    public static ActionTable<GridState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Moving().In(GridMode.Grid, "Moving"),
            .. Reading().In(GridMode.Grid, "Reading"),
            .. Changing().In(GridMode.Grid, "Changing"),
            .. Copying().In(GridMode.Grid, "Copying"),
            .. GridDoors.All.In(GridMode.Grid, "Other screens"),
            .. Keeping().In(GridMode.Grid, "Keeping"),
            .. GridReviewActions.InGrid.In(GridMode.Grid, "Review"),
            .. GridPageActions.All,
        ]);

    private static IEnumerable<ScreenAction<GridState>> Moving() =>
    [
        Shows("left", ["Left", "h"], "the week before", state => GridMoves.By(state, 0, -1)),
        Shows("right", ["Right", "l"], "the week after", state => GridMoves.By(state, 0, 1)),
        Shows("up", ["Up", "k"], "the lane above", state => GridMoves.By(state, -1, 0)),
        Shows("down", ["Down", "j"], "the lane below", state => GridMoves.By(state, 1, 0)),
        Shows("first-week", ["Home"], "the first week", state => GridMoves.To(state, state.LaneIndex, 1)),
        Shows("last-week", ["End"], "the last week", state => GridMoves.To(state, state.LaneIndex, state.Plan.Weeks)),
        Shows("band-up", ["PgUp"], "the start of this band, then of the one above", state => GridMoves.ToBand(state, down: false)),
        Shows("band-down", ["PgDn"], "the band below", state => GridMoves.ToBand(state, down: true)),
        Shows("first-lane", ["g"], "the first lane", state => GridMoves.To(state, 0, state.Week)),
        Shows("last-lane", ["G"], "the last lane", state => GridMoves.To(state, state.Plan.Lanes.Length - 1, state.Week)),
        Shows("present-week", ["t"], "the present week", state => GridMoves.To(state, state.LaneIndex, state.PresentWeek)),
    ];

    private static IEnumerable<ScreenAction<GridState>> Reading() =>
    [
        Shows("help", ["F1", "?"], "this page", state => state with { Mode = GridMode.Help, HelpFor = GridMode.Grid, Scroll = 0 }).Hinted(1, "help"),
        Shows("why", ["w"], "the whole answer to why this cell is so", state => state with { Mode = GridMode.Why, Scroll = 0, Status = "" }).Hinted(3, "why"),
        Shows("answer-on", ["]"], "read on in the answer", state => GridScroll.By(state, 3)),
        Shows("answer-back", ["["], "read back in the answer", state => GridScroll.By(state, -3)),
        Shows("findings", ["f"], "the list of findings, worst first", GridFindings.Open).Hinted(4, "findings"),
        Shows("finding-on", ["Tab"], "the next cell with a finding", state => GridMoves.ToFinding(state, forward: true)).Unless(WhyNoFinding),
        Shows("finding-back", ["Shift+Tab"], "the cell with a finding before", state => GridMoves.ToFinding(state, forward: false)).Unless(WhyNoFinding),
        Shows("change-on", ["."], "the next changed cell: since it was saved, or signed", state => GridChanges.To(state, state.Since, forward: true)).Unless(WhyNoChange),
        Shows("change-back", [","], "the changed cell before", state => GridChanges.To(state, state.Since, forward: false)).Unless(WhyNoChange),
        Shows("days", ["d"], "the seven days of the week: what is due, what was done", state => state with { Mode = GridMode.Days, Scroll = 0, Status = "" }),
        Shows("zoom", ["z"], "more weeks, or more words in each", state => state with { Close = !state.Close }),
        Shows("answer", ["v"], "show or hide the answer with the grid", state => state with { ShowsAnswer = !state.ShowsAnswer }),
    ];

    private static IEnumerable<ScreenAction<GridState>> Changing() =>
    [
        Shows("edit", ["Enter", "F2"], "type the cell's content", GridTyping.Begin).Hinted(2, "edit").Unless(WhyNotEdit),
        Does("clear", ["x", "Delete"], "empty the cell and keep it empty", state => GridEdits.Propose(state, null))
            .Unless(state => WhyNotEdit(state) ?? (state.Plan.At(state.Cursor)?.Content is null ? "The cell is empty already." : null)),
        Does("unpin", ["p"], "give the cell back to the draft", GridEdits.Unpin).Hinted(5, "unpin")
            .Unless(state => WhyNotEdit(state) ?? (state.Plan.At(state.Cursor) is { IsPinned: true } ? null : "The cell is not pinned.")),
        Does("pin", ["P"], "keep the cell as it is: no draft changes it", GridEdits.Pin)
            .Unless(state => WhyNotEdit(state) ?? (state.Plan.At(state.Cursor) is { IsPinned: true } ? "The cell is pinned already." : null)),
        Does("cure", ["c"], "do what the cell's worst finding offers as its cure", state => GridEdits.Cure(state, GridFindings.Curable(state)!.Cure!))
            .Hinted(5, "cure").Unless(state => GridEdits.WhyNotCure(state, GridFindings.Curable(state))),
        Does("undo", ["u", "Ctrl+Z"], "take the last change back, as often as you like", GridEdits.Undo).Hinted(8, "undo")
            .Unless(state => state.Done.IsEmpty ? "There is nothing to undo." : null),
        Does("redo", ["Ctrl+Y", "Ctrl+R"], "do it again", GridEdits.Redo)
            .Unless(state => state.Undone.IsEmpty ? "There is nothing to redo." : null),
    ];

    private static IEnumerable<ScreenAction<GridState>> Copying() =>
    [
        Shows("copy", ["y", "Ctrl+C"], "copy the cell", GridCopies.Copy).Unless(GridCopies.WhyNotCopy),
        Does("put", ["Y", "Ctrl+V"], "put the copy into this cell", GridCopies.Put).Hinted(3, "put copy").Unless(state => GridEdits.WhyNotChange(state) ?? GridCopies.WhyNotPut(state)),
        Does("copy-on", [">"], "copy the cell into the next week and go there", GridCopies.OnByOne)
            .Unless(state => GridEdits.WhyNotChange(state) ?? GridCopies.WhyNotCopy(state) ?? GridCopies.WhyNoWeekAfter(state)),
        Shows("fill", ["F"], "fill the cell on to the right, to the end or not", GridTyping.BeginFill)
            .Unless(state => GridEdits.WhyNotChange(state) ?? GridCopies.WhyNotCopy(state) ?? GridCopies.WhyNoWeekAfter(state)),
        Does("copy-week", ["n"], "copy the week's stim and active work to the next", state => GridCopies.Week(state, 1)).Unless(WhyNoWeek),
        Does("copy-week-on", ["N"], "the same to every week after", state => GridCopies.Week(state, state.Plan.Weeks - state.Week)).Unless(WhyNoWeek),
    ];

    private static IEnumerable<ScreenAction<GridState>> Keeping() =>
    [
        Does("save", ["Ctrl+S"], "save the plan", state => Step.To(state, new SavePlan(state.Plan))).Hinted(6, "save")
            .Unless(state => state.IsScratch ? "A scratch copy is not saved: Esc leaves it." : state.IsUnsaved ? null : "Everything is saved."),
        Shows("drafts", ["D"], "the drafts that an earlier session kept", GridDrafts.Open).Hinted(2, "kept drafts").Unless(state => state.IsScratch || state.Offers.IsEmpty ? "No draft of an earlier session waits." : null),
        Does("quit-copy", ["Esc"], "out of what is only tried; nothing of it is kept", state => Step.To(state, new LeaveScreen())).Unless(state => state.IsScratch ? null : "This is the plan itself: q leaves it.").AsBack(),
        Quit("leave; unsaved changes stay as a draft").Hinted(7, "quit").Unless(WhyNotQuit).AsBack(),
        Does("quit-and-lose", ["Q"], "leave and lose the changes that cannot be kept", state => Step.To(state, new LeaveScreen()))
            .Unless(state => WhyNotQuit(state) is null ? "Nothing would be lost: q leaves." : null),
        CommonRows.Repaint<GridState>(),
    ];

    /// <summary>Leaving asks nothing, because the draft was kept with every change; where that failed it is refused first.</summary>
    internal static ScreenAction<GridState> Quit(string help) => Does("quit", ["q", "Ctrl+Q"], help, state => Step.To(state, new LeaveScreen()));

    private static string? WhyNotQuit(GridState state) => state is { IsUnsaved: true, DraftProblem: { } problem }
        ? $"The changes are not kept ({problem}) Ctrl+S saves; Q leaves and loses them."
        : null;

    private static string? WhyNotEdit(GridState state) => GridEdits.WhyNotChange(state) ?? PlanEdit.WhyNot(state.Plan, state.Cursor);

    private static string? WhyNoChange(GridState state) => GridChanges.Of(state, state.Since).IsEmpty ? $"No cell differs from the {(ReferenceEquals(state.Since, state.Saved) ? "saved" : "signed")} plan." : null;

    private static string? WhyNoWeek(GridState state) => GridEdits.WhyNotChange(state) ?? GridCopies.WhyNoWeekAfter(state);

    private static string? WhyNoFinding(GridState state) =>
        state.Findings.Any(finding => finding.Cells.Any(cell => state.Plan.LaneOf(cell.Lane) is not null)) ? null : "No cell has a finding.";
}
