using Progression.App.Actions;
using Progression.Core.Reviews;
using static Progression.App.Grid.GridRow;

namespace Progression.App.Grid;

/// <summary>The rows of the grid's table that are about its review.</summary>
internal static class GridReviewActions
{
    private const string NotHere = "This plan is not kept in a store: nobody can review it.";

    /// <summary>Those of the grid itself.</summary>
    public static IEnumerable<ScreenAction<GridState>> InGrid =>
    [
        Shows("review", ["o"], "the review: changes, why, comments; ask, return, sign", GridReviewing.Open).Hinted(11, "review").Unless(WhyNoReview),
        Shows("comment", ["C"], "comment on this cell", state => GridReviewing.Begin(state, GridMode.Comment)).Unless(state => WhyNot(state, ReviewStep.Commented)),
        Shows("comment-on", [";"], "the next cell with a comment", GridReviewing.ToComment).Unless(state => GridReviewing.Commented(state).Any() ? null : "No cell has a comment."),
        Shows("marks", ["M"], "mark what changed since it was signed; . goes there", state => state with { Review = state.Review! with { MarksChanges = !state.Review.MarksChanges } })
            .Unless(state => WhyNoReview(state) ?? (state.Review!.Signed is null ? "The plan was never signed, so all of it is new." : null)),
        Does("newer", ["U"], "take up what somebody else saved", state => Step.To(state, new TakeNewer())).Hinted(2, "newer revision")
            .Unless(state => WhyNoReview(state) ?? (state.Review!.Newer.Length == 0 ? "Nobody has saved a newer revision." : null)),
    ];

    /// <summary>Those of its pages.</summary>
    public static IEnumerable<ScreenAction<GridState>> All =>
    [
        .. Overview().In(GridMode.Review, "Reviewing the plan"),
        .. Typing("put the comment").In(GridMode.Comment, "Commenting on a cell"),
        .. Typing("put the comment").In(GridMode.Remark, "Commenting on the plan"),
        .. Typing("return the plan").In(GridMode.Return, "Returning the plan"),
        .. Typing("ask for the review").In(GridMode.Ask, "Asking for a review"),
        .. Signing().In(GridMode.Sign, "Signing the plan"),
        .. Confirming().In(GridMode.Confirm, "Signing the plan: last question"),
    ];

    private static IEnumerable<ScreenAction<GridState>> Overview() =>
    [
        GridPageActions.HelpOn(["F1", "?"]),
        Does("sign", ["s"], "sign the plan as it stands", GridReviewing.BeginSigning).Hinted(2, "sign").Unless(WhyNotSaved) with { Offered = state => WhyNot(state, ReviewStep.Signed) is null },
        Shows("return", ["r"], "give it back with a comment", state => GridReviewing.Begin(state, GridMode.Return)).Hinted(3, "return").Unless(state => WhyNot(state, ReviewStep.Returned)),
        Shows("ask", ["a"], "ask for a review of the plan as it was saved", state => GridReviewing.Begin(state, GridMode.Ask)).Hinted(3, "ask for a review")
            .Unless(state => WhyNotSaved(state) ?? WhyNot(state, ReviewStep.Requested)),
        Does("take-back", ["b"], "take the request back", state => Step.To(state, new DoReview(ReviewStep.Withdrawn, []))).Hinted(3, "take back").Unless(state => WhyNot(state, ReviewStep.Withdrawn)),
        Shows("remark", ["c"], "comment on the plan as a whole", state => GridReviewing.Begin(state, GridMode.Remark)).Hinted(4, "comment").Unless(state => WhyNot(state, ReviewStep.Commented)),
        Shows("back", ["Esc", "o", "q"], "to the grid", state => state with { Mode = GridMode.Grid, Scroll = 0, Status = "" }).Hinted(5, "grid").AsBack(),
        .. CommonRows.Reading<GridState>(GridScroll.By).Select(row => row with { HintRank = row.HintRank is null ? null : row.HintRank + 4 }),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Typing(string take) =>
    [
        GridPageActions.HelpOn(["F1"]),
        Does("take", ["Enter"], take, GridReviewing.HandIn).Hinted(2, "take"),
        Shows("cancel", ["Esc"], "leave it; nothing is said", GridReviewing.Cancel).Hinted(3, "cancel").AsBack(),
        .. CommonRows.Typing<GridState>(GridTyping.With),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Signing() =>
    [
        GridPageActions.HelpOn(["F1"]),
        Does("take", ["Enter"], "go on to the last question", GridReviewing.HandIn).Hinted(2, "go on"),
        Shows("cancel", ["Esc"], "leave it; nothing is signed", GridReviewing.Cancel).Hinted(3, "cancel").AsBack(),
        Shows("meaning-on", ["Down"], "the next of what a signature can say", state => GridReviewing.Choose(state, 1)).Hinted(4, "say else"),
        Shows("meaning-back", ["Up"], "the one before", state => GridReviewing.Choose(state, -1)),
        .. CommonRows.Typing<GridState>(GridTyping.With, rank: 5),
        CommonRows.Repaint<GridState>(),
    ];

    private static IEnumerable<ScreenAction<GridState>> Confirming() =>
    [
        GridPageActions.HelpOn(["F1", "?"]),
        Does("sign", ["y"], "sign", GridReviewing.Sign).Hinted(2, "sign"),
        Shows("back", ["Esc", "n"], "back to the form", state => state with { Mode = GridMode.Sign, Status = "" }).Hinted(3, "back").AsBack(),
        Shows("cancel", ["q"], "leave it; nothing is signed", GridReviewing.Cancel).Hinted(4, "leave"),
        CommonRows.Repaint<GridState>(),
    ];

    private static string? WhyNoReview(GridState state) => state.IsScratch ? "A scratch copy is not reviewed: q leaves it." : state.Review is null ? NotHere : null;

    private static string? WhyNot(GridState state, ReviewStep step) => WhyNoReview(state) ?? state.Review!.WhyNot(step);

    private static string? WhyNotSaved(GridState state) => WhyNoReview(state) ?? (state.IsUnsaved ? "The plan has unsaved changes: Ctrl+S in the grid saves them first." : null);
}
