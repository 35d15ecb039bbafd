using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>
/// Copying cells and weeks. What is pinned, done or computed is left as it is, and is told; the rest goes through the same checks as a single edit and is
/// undone as one step.
/// </summary>
public static class GridCopies
{
    private const int MostNamed = 2;

    /// <summary>Takes the cell under the cursor as what will be put into others.</summary>
    public static GridState Copy(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        CellContent content = state.Plan.ContentAt(state.Lane.Id, state.Week)!;
        string what = $"{state.Lane.Title}, week {state.Week}: {CellNotation.Text(state.Lane, content, state.Desk.Library)}";
        return state with { Copied = new(state.Lane, content), Status = $"Copied {what}. Y puts it into another cell." };
    }

    /// <summary>Puts what was copied into the cell under the cursor.</summary>
    public static Step<GridState> Put(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return GridEdits.Propose(state, state.Copied!.Content);
    }

    /// <summary>Copies the cell under the cursor into the next week and goes there; a cell that is left as it is keeps the cursor where it was.</summary>
    public static Step<GridState> OnByOne(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        Step<GridState> step = Fill(state, 1);
        return state.Plan.At(new(state.Lane.Id, state.Week + 1)) is { IsPinned: true } ? step : step with { State = step.State with { Week = state.Week + 1 } };
    }

    /// <summary>Fills the cell under the cursor on into the weeks after.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="weeks">For how many weeks, from 1.</param>
    public static Step<GridState> Fill(GridState state, int weeks)
    {
        ArgumentNullException.ThrowIfNull(state);
        CellContent? content = state.Plan.At(state.Cursor)?.Content;
        return Spread(state, [.. Enumerable.Range(state.Week + 1, weeks).Select(week => new CellChange(new(state.Lane.Id, week), content))], $"{state.Lane.Title} of week {state.Week}");
    }

    /// <summary>Copies the stim and the active work of the week under the cursor into the weeks after; their goals stay their own.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="weeks">Into how many weeks, from 1.</param>
    public static Step<GridState> Week(GridState state, int weeks)
    {
        ArgumentNullException.ThrowIfNull(state);
        IEnumerable<CellChange> changes =
            from lane in state.Plan.Lanes
            where lane.Band is Band.Stim or Band.Active
            from week in Enumerable.Range(state.Week + 1, weeks)
            select new CellChange(new(lane.Id, week), state.Plan.ContentAt(lane.Id, state.Week));
        return Spread(state, [.. changes], $"Work of week {state.Week}");
    }

    /// <summary>Why nothing can be copied from the cell under the cursor; null when it can.</summary>
    public static string? WhyNotCopy(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Lane.Band == Band.Checks ? "This lane is computed from the others."
            : state.Plan.ContentAt(state.Lane.Id, state.Week) is null ? "The cell is empty: there is nothing to copy." : null;
    }

    /// <summary>Why what was copied cannot be put into the cell under the cursor; null when it can.</summary>
    public static string? WhyNotPut(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Copied is not { } copied ? "Nothing was copied yet: y copies a cell."
            : PlanEdit.WhyNot(state.Plan, state.Cursor)
            ?? (copied.Lane.Band == state.Lane.Band && copied.Lane.Measure == state.Lane.Measure ? null : $"What was copied belongs to {copied.Lane.Title}.");
    }

    /// <summary>Why there is no week to copy into; null when there is.</summary>
    public static string? WhyNoWeekAfter(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Week >= state.Plan.Weeks ? "This is the plan's last week." : null;
    }

    private static Step<GridState> Spread(GridState state, ImmutableArray<CellChange> wanted, string what)
    {
        ImmutableArray<(CellAddress Address, string Why)> left = [.. wanted.Select(change => (change.Address, Why: WhyLeft(state.Plan, change))).Where(cell => cell.Why.Length > 0)];
        ImmutableArray<CellChange> changes = [.. wanted.Where(change => !Equals(state.Plan.At(change.Address)?.Content, change.Content) && left.All(cell => cell.Address != change.Address))];
        string told = string.Concat(left.GroupBy(cell => cell.Why).Select(same => $"; {Left(state, same.Key, [.. same.Select(cell => cell.Address)])}"));
        if (changes.IsEmpty)
        {
            return Step.To(state with { Mode = GridMode.Grid, Entry = null, Status = told.Length == 0 ? "Nothing changed: the same stands there already." : $"Nothing was copied{told}." });
        }

        string into = WeekWords.Of([.. changes.Select(change => change.Address.Week).Distinct().Order()]);
        return GridEdits.Propose(state, changes, $"{what} copied to {into}{told}");
    }

    // Empty when the cell is not left. One that has the same already is neither changed nor told.
    private static string WhyLeft(PlanRevision plan, CellChange change) =>
        Equals(plan.At(change.Address)?.Content, change.Content) ? ""
        : plan.At(change.Address) is { IsPinned: true } ? "pinned"
        : PlanEdit.WhyNot(plan, change.Address) is not null ? "done" : "";

    private static string Left(GridState state, string why, ImmutableArray<CellAddress> cells)
    {
        (string verb, string stay) = cells.Length == 1 ? ("is", "was") : ("are", "were");
        bool oneLane = cells.All(cell => cell.Lane == state.Lane.Id);
        string names = oneLane
            ? WeekWords.Of([.. cells.Select(cell => cell.Week)])
            : string.Join(", ", cells.Take(MostNamed).Select(cell => $"{state.Plan.LaneOf(cell.Lane)!.Title} of week {cell.Week}"))
                + (cells.Length > MostNamed ? $" and {cells.Length - MostNamed} more" : "");
        return $"{names} {verb} {why} and {stay} left";
    }
}

/// <summary>A cell's content to be put into others.</summary>
/// <param name="Lane">The lane it was copied from.</param>
/// <param name="Content">The content.</param>
public sealed record CopiedCell(Lane Lane, CellContent Content);
