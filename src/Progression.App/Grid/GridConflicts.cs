using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Putting together what two people changed, cell by cell. What only one changed is taken unasked; the rest is chosen.</summary>
public static class GridConflicts
{
    /// <summary>Shows both sides.</summary>
    public static GridState Open(GridState state, PlanConflict conflict)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(conflict);
        return state with { Conflict = conflict, Mode = GridMode.Conflict, Entry = null, Status = "Not saved yet: somebody saved first. Nothing is lost." };
    }

    /// <summary>The cells that differ.</summary>
    public static ImmutableArray<ForkedCell> Cells(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Conflict is { } conflict ? PlanFork.Of(conflict.Base, state.Plan, conflict.Theirs) : [];
    }

    /// <summary>The cell under the cursor; null when none differs.</summary>
    public static ForkedCell? Chosen(GridState state) => Cells(state) is { IsEmpty: false } cells ? cells[Math.Clamp(state.Conflict!.Line, 0, cells.Length - 1)] : null;

    /// <summary>Whether this person's content is taken; null where nothing was chosen yet.</summary>
    public static bool? IsMine(PlanConflict conflict, ForkedCell cell)
    {
        ArgumentNullException.ThrowIfNull(conflict);
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Side == ForkSide.Closed ? false
            : conflict.Picks.TryGetValue(cell.Address, out bool mine) ? mine
            : cell.Side switch { ForkSide.Mine => true, ForkSide.Theirs => false, _ => null };
    }

    /// <summary>The list with another cell chosen; it stays at its ends.</summary>
    public static GridState Choose(GridState state, int line)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Conflict = state.Conflict! with { Line = Math.Clamp(line, 0, Math.Max(0, Cells(state).Length - 1)) }, Status = "" };
    }

    /// <summary>The other choice for the cell under the cursor; the first takes this person's.</summary>
    public static GridState Toggle(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ForkedCell cell = Chosen(state)!;
        return state with { Conflict = state.Conflict! with { Picks = state.Conflict.Picks.SetItem(cell.Address, IsMine(state.Conflict, cell) is not true) }, Status = "" };
    }

    /// <summary>Why there is nothing to choose for the cell under the cursor; null when there is.</summary>
    public static string? WhyNotToggle(GridState state) => Chosen(state) is not { } cell ? "No cell differs." : PlanEdit.WhyNot(state.Conflict!.Theirs, cell.Address);

    /// <summary>All cells from one side.</summary>
    public static GridState All(GridState state, bool mine)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Conflict = state.Conflict! with { Picks = Cells(state).ToImmutableDictionary(cell => cell.Address, _ => mine) }, Status = "" };
    }

    /// <summary>Why it cannot be saved yet; null when it can.</summary>
    public static string? WhyNotSave(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        int open = Cells(state).Count(cell => IsMine(state.Conflict!, cell) is null);
        return open == 0 ? null : $"{(open == 1 ? "1 cell was" : $"{open} cells were")} changed by both of you: Space chooses for each.";
    }

    /// <summary>Saves what was put together, over the other's revision.</summary>
    public static Step<GridState> Save(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableArray<ForkedCell> mine = [.. Cells(state).Where(cell => IsMine(state.Conflict!, cell) is true)];
        PlanRevision theirs = state.Conflict!.Theirs;
        return Step.To(state, new SaveMerged(mine.IsEmpty ? theirs : PlanFork.Joined(theirs, mine)));
    }

    /// <summary>Back to the grid; the changes stay unsaved there, and kept as a draft.</summary>
    public static GridState Leave(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Conflict = null, Mode = GridMode.Grid, Status = "Your changes are not saved, and kept as a draft: Ctrl+S asks again." };
    }
}
