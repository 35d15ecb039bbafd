using Progression.App.Actions;
using Progression.App.Grid;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Screens;

/// <summary>Does what the grid asks about its review, and takes what others have saved.</summary>
/// <param name="room">Keeps the case.</param>
internal sealed class ReviewDoor(StoredPlan room)
{
    /// <summary>Does an effect that is about reviews or others; null for any other effect.</summary>
    public Turn<GridState>? Open(GridState grid, ScreenEffect effect) => effect switch
    {
        DoReview step => Turn.Stay(Done(grid, step)),
        RefuseReview refuse => Turn.Stay(With(grid, room.Refusal(refuse.Step))),
        OthersSaved news => Turn.Stay(Heard(grid, news)),
        TakeNewer => Turn.Stay(Newer(grid)),
        SaveMerged save => Turn.Stay(Saved(grid, save.Plan)),
        _ => null,
    };

    /// <summary>The grid with the review as it is known now.</summary>
    public GridState With(GridState grid, string? told = null)
    {
        GridReview? review = room.Review(grid.Review);
        return grid with { Review = review, Status = told ?? grid.Status };
    }

    private GridState Done(GridState grid, DoReview step)
    {
        string? problem = room.Do(step, grid);
        GridState now = With(grid);
        return now with { Status = problem is not null ? $"Not done: {problem}" : Told(now, step.Step) };
    }

    private static string Told(GridState grid, ReviewStep step) => step switch
    {
        ReviewStep.Signed => $"{SignatureWords.Of(grid.Review!.Standing)}.",
        ReviewStep.Requested => $"Review of revision {grid.Review!.Standing.Plan.Revision} is asked for.",
        ReviewStep.Withdrawn => "The request is taken back.",
        ReviewStep.Returned => "The plan is returned, with your comment.",
        _ => "Your comment is kept.",
    };

    // The cursor, what is typed and what is unsaved stay as they are; only the line of words and the title tell.
    private GridState Heard(GridState grid, OthersSaved news)
    {
        int known = grid.Review?.Plan.Record.Acts.Length ?? 0;
        room.Take(news);
        GridState now = With(grid);
        ReviewAct? latest = now.Review?.Plan.Record.Acts.Skip(known).LastOrDefault();
        string told = now.Review is { Newer.Length: > 0 } newer && newer.Newer != grid.Review?.Newer ? $"{newer.Newer}: U shows it." : latest is null ? "" : Words(latest);
        return told.Length == 0 ? now : now with { Status = told };
    }

    private static string Words(ReviewAct act) => act.Step switch
    {
        ReviewStep.Signed => $"Signed by {act.By.Name}, revision {act.Plan.Revision}.",
        ReviewStep.Returned => $"Returned by {act.By.Name} with {SignatureWords.Comments(act.Comments.Length)}: o shows it.",
        ReviewStep.Commented => $"{act.By.Name} commented: {act.Comments[^1].Text}",
        _ => $"{act.By.Name} {SignatureWords.Of(act.Step)}.",
    };

    private GridState Newer(GridState grid)
    {
        if (room.Meet(grid.Saved) is not { } conflict)
        {
            return grid with { Status = "There is nothing newer, or it cannot be read now." };
        }

        return grid.IsUnsaved ? GridConflicts.Open(grid, conflict) : Saved(grid with { Conflict = conflict }, conflict.Theirs);
    }

    private GridState Saved(GridState grid, PlanRevision plan)
    {
        PlanConflict conflict = grid.Conflict!;
        if (room.SaveOver(plan, conflict.Theirs) is { } problem)
        {
            return room.Meet(grid.Saved) is { } again && !ReferenceEquals(again.Theirs, conflict.Theirs)
                ? GridConflicts.Open(grid, again with { Picks = conflict.Picks })
                : grid with { Status = $"Not saved: {problem}" };
        }

        GridState on = grid with { Desk = PlanDesk.For(room.Case, grid.Desk.Library, grid.Desk.Today), Conflict = null, Mode = GridMode.Grid, Done = [], Undone = [], DraftProblem = null };
        return With(on.WithPlan(plan) with { Saved = plan }, ReferenceEquals(plan, conflict.Theirs) ? $"This is what stands now: {conflict.Saved}" : "Saved, both put together.");
    }
}
