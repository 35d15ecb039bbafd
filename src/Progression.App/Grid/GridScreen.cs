using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Grid;

/// <summary>The grid screen, ready for the shell.</summary>
public static class GridScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<GridState> Definition { get; } = new()
    {
        Actions = GridActions.Table,
        Draw = (state, size) => GridPicture.Draw(state, size, GridActions.Table),
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = GridTyping.Type,
        Aloud = GridAloud.Words,
    };

    internal static ScreenPlace Where(GridState state) => new(state.IsScratch ? "What if" : "Grid")
    {
        Whose = CaseTitle.Of(state.Desk.Case),
        What = $"{state.Lane.Title}, week {state.Week} of {state.Plan.Weeks}",
        Kept = state.IsScratch ? "nothing is kept" : state.IsUnsaved ? state.Done.Count() is 1 ? "1 change unsaved" : $"{state.Done.Count()} changes unsaved" : Saved(state.Review),
        IsUnsaved = state.IsUnsaved && !state.IsScratch,
    };

    // A plan that was changed is not what was signed, so what is unsaved says enough.
    private static string Saved(GridReview? review) => review switch
    {
        null => "saved",
        { Newer.Length: > 0 } => "newer revision saved",
        _ => $"saved, {Core.Reviews.SignatureWords.Brief(review.Standing)}",
    };
}
