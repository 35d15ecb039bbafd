using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Moving the cursor. Each function gives the state with the cursor elsewhere, or the same place at an edge.</summary>
public static class GridMoves
{
    /// <summary>By so many lanes down and weeks to the right; negative goes up and left.</summary>
    public static GridState By(GridState state, int lanes, int weeks)
    {
        ArgumentNullException.ThrowIfNull(state);
        return To(state, state.LaneIndex + lanes, state.Week + weeks);
    }

    /// <summary>To a lane, from 0, and a week, from 1; both are brought into the plan.</summary>
    public static GridState To(GridState state, int laneIndex, int week)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with
        {
            LaneIndex = Math.Clamp(laneIndex, 0, state.Plan.Lanes.Length - 1),
            Week = Math.Clamp(week, 1, state.Plan.Weeks),
            Scroll = 0,
            Status = "",
        };
    }

    /// <summary>To a cell; a lane the plan does not have leaves the cursor where it is.</summary>
    public static GridState To(GridState state, CellAddress address)
    {
        ArgumentNullException.ThrowIfNull(state);
        Lane? lane = state.Plan.LaneOf(address.Lane);
        return lane is null ? state : To(state, state.Plan.Lanes.IndexOf(lane), address.Week);
    }

    /// <summary>To the first lane of the next band, or of this or the one before.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="down">Whether to go down; up goes first to the start of this band.</param>
    public static GridState ToBand(GridState state, bool down)
    {
        ArgumentNullException.ThrowIfNull(state);
        List<int> starts = [.. Enumerable.Range(0, state.Plan.Lanes.Length)
            .Where(at => at == 0 || state.Plan.Lanes[at].Band != state.Plan.Lanes[at - 1].Band)];
        int target = down
            ? starts.FirstOrDefault(at => at > state.LaneIndex, state.Plan.Lanes.Length - 1)
            : starts.LastOrDefault(at => at < state.LaneIndex, 0);
        return To(state, target, state.Week);
    }

    /// <summary>To the next cell with a finding in reading order, going round at the end.</summary>
    public static GridState ToFinding(GridState state, bool forward)
    {
        ArgumentNullException.ThrowIfNull(state);
        List<(int Lane, int Week)> cells = [.. state.Findings.SelectMany(finding => finding.Cells).Distinct()
            .Where(cell => state.Plan.LaneOf(cell.Lane) is not null)
            .Select(cell => (state.Plan.Lanes.IndexOf(state.Plan.LaneOf(cell.Lane)!), cell.Week))
            .Order()];
        (int, int) here = (state.LaneIndex, state.Week);
        (int lane, int week) = forward
            ? cells.FirstOrDefault(cell => cell.CompareTo(here) > 0, cells[0])
            : cells.LastOrDefault(cell => cell.CompareTo(here) < 0, cells[^1]);
        GridState there = To(state, lane, week);
        Finding worst = there.FindingsOn(there.Cursor).First();
        return there with { Status = FindingWords.Line(worst) };
    }
}
