using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>What becomes of the drafts of earlier sessions: each is recovered, compared first, or discarded; nothing is done without being asked for.</summary>
public static class GridDrafts
{
    /// <summary>The question about the first draft.</summary>
    public static GridState Open(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = GridMode.Draft, Status = "" };
    }

    /// <summary>The cells that the first draft has otherwise than the plan now; empty when it is a form.</summary>
    public static ImmutableArray<MergeCell> Cells(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Offers is [{ Plan: { } draft } offer, ..] ? PlanMerge.Of(offer.From, draft, state.Plan) : [];
    }

    /// <summary>How many cells or lines the first draft changes.</summary>
    public static int Count(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Offers is [{ Plan: null } form, ..] ? form.Lines.Length : Cells(state).Length;
    }

    /// <summary>Whether the draft's content is taken for a cell; null where the person has not chosen yet.</summary>
    public static bool? IsTaken(GridState state, MergeCell cell)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(cell);
        return cell.Standing == MergeStanding.Closed ? false
            : state.DraftPicks.TryGetValue(cell.Address, out bool taken) ? taken
            : cell.Standing == MergeStanding.Clean ? true : null;
    }

    /// <summary>The comparison with another line chosen; it stays at its ends.</summary>
    public static GridState Choose(GridState state, int line)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { DraftLine = Math.Clamp(line, 0, Math.Max(0, Count(state) - 1)), Status = "" };
    }

    /// <summary>The other choice for the chosen cell, and on to the next; the first choice takes the draft's.</summary>
    public static GridState Toggle(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        MergeCell cell = Cells(state)[state.DraftLine];
        return state with { DraftPicks = state.DraftPicks.SetItem(cell.Address, IsTaken(state, cell) is not true), Status = "" };
    }

    /// <summary>Why there is nothing to choose for the chosen line; null when there is.</summary>
    public static string? WhyNotToggle(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableArray<MergeCell> cells = Cells(state);
        return cells.IsEmpty ? "A form is recovered whole; its lines can be changed there."
            : cells[Math.Clamp(state.DraftLine, 0, cells.Length - 1)].Standing == MergeStanding.Closed ? PlanEdit.WhyNot(state.Plan, cells[Math.Clamp(state.DraftLine, 0, cells.Length - 1)].Address)
            : null;
    }

    /// <summary>Why the draft cannot be recovered yet; null when it can.</summary>
    public static string? WhyNotRecover(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        int open = Cells(state).Count(cell => IsTaken(state, cell) is null);
        return open == 0 ? null : $"{(open == 1 ? "1 cell was" : $"{open} cells were")} changed on both sides: c compares, Space chooses for each.";
    }

    /// <summary>Recovers the first draft: a plan as a change that can be undone, a form by opening it as it was left.</summary>
    public static Step<GridState> Recover(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        DraftOffer offer = state.Offers[0];
        if (offer.Plan is null)
        {
            return Step.To(Without(state) with { Status = "" }, new OpenKeptForm(offer.Id));
        }

        ImmutableArray<MergeCell> cells = Cells(state);
        ImmutableArray<MergeCell> taken = [.. cells.Where(cell => IsTaken(state, cell) is true)];
        if (taken.IsEmpty)
        {
            return Step.To(Without(state) with { Status = "Nothing of the draft was taken; it was dropped." }, new ForgetDraft(offer.Id));
        }

        bool whole = taken.Length == cells.Length && ReferenceEquals(offer.From, state.Plan);
        Step<GridState> step = GridEdits.Change(state, whole ? offer.Plan : PlanMerge.Take(state.Plan, taken), $"kept draft recovered, {(taken.Length == 1 ? "1 cell" : $"{taken.Length} cells")}");
        return step with { State = Without(step.State), Effects = [.. step.Effects, new ForgetDraft(offer.Id)] };
    }

    /// <summary>Drops the first draft.</summary>
    public static Step<GridState> Discard(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Step.To(Without(state) with { Status = "The draft was dropped." }, new ForgetDraft(state.Offers[0].Id));
    }

    /// <summary>To the grid; what was not decided waits.</summary>
    public static GridState Later(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = GridMode.Grid, Status = state.Offers.Length == 1 ? "The draft waits: D asks again." : $"{state.Offers.Length} drafts wait: D asks again." };
    }

    // The next question, or the grid.
    private static GridState Without(GridState state)
    {
        ImmutableArray<DraftOffer> rest = state.Offers.RemoveAt(0);
        return state with
        {
            Offers = rest,
            Mode = rest.IsEmpty ? GridMode.Grid : GridMode.Draft,
            DraftPicks = ImmutableDictionary<CellAddress, bool>.Empty,
            DraftLine = 0,
        };
    }
}
