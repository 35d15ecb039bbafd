using Progression.App.Actions;
using Progression.App.Grid;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Screens;

/// <summary>The plan of a case was left.</summary>
/// <param name="Code">Which case.</param>
/// <param name="Told">What is said on leaving; null for nothing.</param>
public sealed record PlanLeft(CaseCode Code, string? Told) : ScreenEffect;

/// <summary>The grid in the stack of screens: saves and keeps drafts as the grid asks.</summary>
public static class PlanFrame
{
    /// <summary>The grid of a plan.</summary>
    /// <param name="start">The state it begins with.</param>
    /// <param name="keeper">Where plan and draft are kept.</param>
    /// <param name="closed">Called with what is said on leaving, null for nothing, when the grid is closed.</param>
    /// <param name="doors">Opens the other screens of the case; null where there are none.</param>
    /// <param name="others">Looks whether others have saved; null where nobody else can.</param>
    public static Frame<GridState> Of(GridState start, PlanKeeper keeper, Action<CaseCode, string?> closed, Func<GridState, ScreenEffect, Turn<GridState>?>? doors = null, Func<ScreenEffect?>? others = null)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(keeper);
        return new Frame<GridState>(GridScreen.Definition, start)
        {
            Perform = (state, effect) => doors?.Invoke(state, effect) ?? Turn.Stay(Perform(state, effect, keeper)),
            KeepWork = state => (state.IsUnsaved ? keeper.KeepAgain(state.Plan) : null) ?? keeper.KeepLine(CellDraft.Of(state)),
            Others = _ => others?.Invoke(),
            Parting = state => new PlanLeft(state.Plan.Code, Farewell(state)),
            Closed = state =>
            {
                keeper.CloseLine(CellDraft.Of(state));
                closed(state.Plan.Code, Farewell(state));
            },
        };
    }

    /// <summary>What is said on leaving: nothing when everything is saved.</summary>
    /// <param name="last">The state in which the screen was left.</param>
    public static string? Farewell(GridState last)
    {
        ArgumentNullException.ThrowIfNull(last);
        string kept = last is { IsUnsaved: true, DraftProblem: not null } ? $"The unsaved changes to {last.Plan.Code} were given up."
            : last.IsUnsaved ? $"The unsaved changes to {last.Plan.Code} are kept as a draft; opening the plan again offers them."
            : last.Offers.Length > 0 ? $"{(last.Offers.Length == 1 ? "A draft" : $"{last.Offers.Length} drafts")} of {last.Plan.Code} {(last.Offers.Length == 1 ? "is" : "are")} still kept."
            : "";
        string waits = last.Waiting.IsEmpty ? "" : $"Half typed and kept for {last.Plan.Code}: {string.Join(", ", last.Waiting)}.";
        return kept.Length + waits.Length == 0 ? null : $"{kept} {waits}".Trim();
    }

    /// <summary>Does an effect of the grid and tells what came of it.</summary>
    /// <param name="state">The state that asked.</param>
    /// <param name="effect">What it asked for.</param>
    /// <param name="keeper">Where plan and draft are kept.</param>
    public static GridState Perform(GridState state, ScreenEffect effect, PlanKeeper keeper)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(keeper);
        return effect switch
        {
            SavePlan save => Save(state, save.Plan, keeper),
            KeepDraft keep => Told(state, keeper.KeepDraft(keep.Plan)),
            DropDraft => Told(state, keeper.DropDraft()),
            // What was recovered goes only when this session has it on disk.
            ForgetDraft forget => state.DraftProblem is null && keeper.Forget(forget.Id) is { } problem ? state with { Status = $"The draft could not be dropped: {problem}" } : state,
            _ => state,
        };
    }

    private static GridState Save(GridState state, PlanRevision plan, PlanKeeper keeper) =>
        keeper.Save(plan) is not { } problem ? state with { Saved = plan, Review = keeper.Review(state.Review), Status = "Saved." }
        : keeper.Meet(state.Saved) is { } conflict ? GridConflicts.Open(state, conflict)
        : state with { Status = $"Not saved: {problem}" };

    private static GridState Told(GridState state, string? problem) =>
        state with { DraftProblem = problem, Status = problem is null ? state.Status : $"The draft could not be kept: {problem}" };
}
