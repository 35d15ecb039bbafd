using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Entry;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>Asking for a review, commenting, returning and signing: what is typed, and what it comes to.</summary>
public static class GridReviewing
{
    /// <summary>The page on where the review stands.</summary>
    public static GridState Open(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = GridMode.Review, Scroll = 0, Status = "" };
    }

    /// <summary>Begins to type what is said with a step.</summary>
    public static GridState Begin(GridState state, GridMode mode)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = mode, Entry = new CellEntry(LineEntry.Empty), Scroll = 0, Status = "" };
    }

    /// <summary>Begins a signature; a try that the rules do not allow is told and written down.</summary>
    public static Step<GridState> BeginSigning(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Review!.WhyNot(ReviewStep.Signed) is null
            ? Step.To(Begin(state with { Review = state.Review with { Meaning = SignatureMeaning.Agreed } }, GridMode.Sign))
            : Step.To(state, new RefuseReview(ReviewStep.Signed));
    }

    /// <summary>Another meaning of the signature; it stays at the ends.</summary>
    public static GridState Choose(GridState state, int by)
    {
        ArgumentNullException.ThrowIfNull(state);
        SignatureMeaning[] all = Enum.GetValues<SignatureMeaning>();
        int at = Math.Clamp(Array.IndexOf(all, state.Review!.Meaning) + by, 0, all.Length - 1);
        return state with { Review = state.Review with { Meaning = all[at] }, Status = "" };
    }

    /// <summary>Hands in what was typed: does the step, or says what is missing and leaves the caret in it.</summary>
    public static Step<GridState> HandIn(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        string text = state.Entry!.Line.Text.Trim();
        ImmutableArray<ReviewComment> said = text.Length == 0 ? [] : [new(state.Mode == GridMode.Comment ? state.Cursor : null, text)];
        return (state.Mode, said.IsEmpty) switch
        {
            (GridMode.Return, true) => Step.To(Refused(state, "A plan is returned with a comment.")),
            (GridMode.Comment or GridMode.Remark, true) => Step.To(Refused(state, "A comment needs words.")),
            (GridMode.Sign, true) when state.Findings.Any(finding => finding.Severity == Core.Findings.Severity.Severe) =>
                Step.To(Refused(state, "What is severe is signed only with the reason why it is right all the same.")),
            (GridMode.Sign, _) => Step.To(state with { Mode = GridMode.Confirm, Status = "" }),
            _ => Step.To(Back(state, Page(state.Mode)), new DoReview(StepOf(state.Mode), said)),
        };
    }

    /// <summary>Signs.</summary>
    public static Step<GridState> Sign(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        string text = state.Entry!.Line.Text.Trim();
        return Step.To(
            Back(state, GridMode.Review), new DoReview(ReviewStep.Signed, text.Length == 0 ? [] : [new(null, text)], state.Review!.Meaning));
    }

    /// <summary>Leaves the line; nothing is done.</summary>
    public static GridState Cancel(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Back(state, Page(state.Mode)) with { Status = "Nothing was said or signed." };
    }

    /// <summary>The next cell with a comment in reading order, going round at the end.</summary>
    public static GridState ToComment(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        List<(int Lane, int Week)> cells = [.. Commented(state).Select(cell => (state.Plan.Lanes.IndexOf(state.Plan.LaneOf(cell.Lane)!), cell.Week)).Distinct().Order()];
        (int lane, int week) = cells.FirstOrDefault(cell => cell.CompareTo((state.LaneIndex, state.Week)) > 0, cells[0]);
        GridState there = GridMoves.To(state, lane, week);
        return there with { Status = ReviewText.Line(there.Review!.On(there.Cursor).Last()) };
    }

    /// <summary>The cells of the grid that have a comment.</summary>
    public static IEnumerable<CellAddress> Commented(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (state.Review?.Plan.Record.Comments ?? []).Select(said => said.Comment.Cell).OfType<CellAddress>()
            .Where(cell => state.Plan.LaneOf(cell.Lane) is not null && cell.Week <= state.Plan.Weeks);
    }

    /// <summary>What a mode of typing is for.</summary>
    internal static ReviewStep StepOf(GridMode mode) => mode switch
    {
        GridMode.Return => ReviewStep.Returned,
        GridMode.Ask => ReviewStep.Requested,
        GridMode.Sign or GridMode.Confirm => ReviewStep.Signed,
        _ => ReviewStep.Commented,
    };

    private static GridMode Page(GridMode typing) => typing == GridMode.Comment ? GridMode.Grid : GridMode.Review;

    private static GridState Back(GridState state, GridMode mode) => state with { Mode = mode, Entry = null, Scroll = 0, Status = "" };

    private static GridState Refused(GridState state, string why)
    {
        Problem problem = new("Comment", why, $"1 to {LineEntry.Longest} characters", "");
        return state with { Entry = state.Entry! with { Problem = problem }, Status = problem.Wrong };
    }
}
