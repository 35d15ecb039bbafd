using System.Collections.Immutable;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Going over the cells that differ from another revision of the plan.</summary>
public static class GridChanges
{
    /// <summary>To the next changed cell in reading order, going round at the end; its status tells what it was.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="against">The revision to compare with, such as <see cref="GridState.Saved"/>; some cell differs from it.</param>
    /// <param name="forward">On, or back.</param>
    public static GridState To(GridState state, PlanRevision against, bool forward)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableArray<CellDifference> changes = Of(state, against);
        (int, int) here = (state.LaneIndex, state.Week);
        int at = forward
            ? changes.ToList().FindIndex(change => Place(state, change).CompareTo(here) > 0)
            : changes.ToList().FindLastIndex(change => Place(state, change).CompareTo(here) < 0);
        int chosen = at >= 0 ? at : forward ? 0 : changes.Length - 1;
        CellDifference change = changes[chosen];
        GridState there = GridMoves.To(state, change.Address);
        return there with { Status = $"Changed cell {chosen + 1} of {changes.Length}: was {Words(there, change.Before)}, is {Words(there, change.After)}." };
    }

    /// <summary>The cells of the grid that differ from a revision.</summary>
    public static ImmutableArray<CellDifference> Of(GridState state, PlanRevision against)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(against);
        return ReferenceEquals(state.Plan, against) ? []
            : [.. PlanDifference.Between(against, state.Plan).Where(change => state.Plan.LaneOf(change.Address.Lane) is not null && change.Address.Week <= state.Plan.Weeks)];
    }

    private static string Words(GridState state, PlanCell? cell) =>
        (cell?.Content is { } content ? CellNotation.Text(state.Lane, content, state.Desk.Library) : "empty") + (cell is { IsPinned: true } ? ", pinned" : "");

    private static (int Lane, int Week) Place(GridState state, CellDifference change) =>
        (state.Plan.Lanes.IndexOf(state.Plan.LaneOf(change.Address.Lane)!), change.Address.Week);
}
