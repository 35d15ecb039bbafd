using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Shell;
using Progression.Core.Plans;

namespace Progression.App.Screens;

/// <summary>Opens a plan in the grid screen on this terminal.</summary>
public static class PlanWorkbook
{
    /// <summary>Shows the grid until it is left.</summary>
    /// <param name="desk">What the grid reads beside the plan.</param>
    /// <param name="plan">The saved plan.</param>
    /// <param name="draft">Unsaved changes kept from an earlier session; null for none.</param>
    /// <param name="keeper">Where plan and draft are kept.</param>
    /// <returns>What to tell after the screen is gone (null for nothing), and the exit code.</returns>
    public static (string? Farewell, int ExitCode) Run(PlanDesk desk, PlanRevision plan, PlanRevision? draft, PlanKeeper keeper) =>
        Run(GridState.Open(desk, plan, draft), keeper);

    /// <summary>The same from a state that is made already.</summary>
    /// <param name="start">The state to begin with.</param>
    /// <param name="keeper">Where plan and draft are kept.</param>
    public static (string? Farewell, int ExitCode) Run(GridState start, PlanKeeper keeper)
    {
        (GridState last, int exitCode) = TerminalSession.Run(
            GridScreen.Definition,
            start,
            (state, effect) => Perform(state, effect, keeper),
            state =>
            {
                if (state.IsUnsaved)
                {
                    keeper.KeepDraft(state.Plan);
                }
            });
        return (Farewell(last), exitCode);
    }

    /// <summary>What is said on leaving: nothing when everything is saved.</summary>
    /// <param name="last">The state in which the screen was left.</param>
    public static string? Farewell(GridState last)
    {
        ArgumentNullException.ThrowIfNull(last);
        return last is { IsUnsaved: true, DraftProblem: not null } ? $"The unsaved changes to {last.Plan.Code} were given up."
            : last.IsUnsaved ? $"The unsaved changes to {last.Plan.Code} are kept as a draft; opening the plan again offers them."
            : last.Draft is not null ? $"The draft of {last.Plan.Code} is still kept."
            : null;
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
            SavePlan save => keeper.Save(save.Plan) is { } problem
                ? state with { Status = $"Not saved: {problem}" }
                : state with { Saved = save.Plan, Status = "Saved." },
            KeepDraft keep => Told(state, keeper.KeepDraft(keep.Plan)),
            DropDraft => Told(state, keeper.DropDraft()),
            _ => state,
        };
    }

    private static GridState Told(GridState state, string? problem) =>
        state with { DraftProblem = problem, Status = problem is null ? state.Status : $"The draft could not be kept: {problem}" };
}
