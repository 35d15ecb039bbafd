using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Changing the plan. Every change can be taken back, is told in the status line and is kept as a draft.</summary>
public static class GridEdits
{
    /// <summary>Puts a content into the cell under the cursor, or asks for a reason first when that goes against a safety rule.</summary>
    public static Step<GridState> Propose(GridState state, CellContent? content)
    {
        ArgumentNullException.ThrowIfNull(state);
        if (Equals(content, state.Plan.At(state.Cursor)?.Content))
        {
            return Step.To(state with { Mode = GridMode.Grid, Entry = null, Status = "Nothing changed." });
        }
        return Propose(state, [new(state.Cursor, content)], $"{Place(state)} set to {Shown(state, content)}");
    }

    /// <summary>Changes some cells in one step that is undone as one, or asks for a reason first when that goes against a safety rule.</summary>
    /// <param name="state">The state before.</param>
    /// <param name="changes">The cells, each of which can be edited, with their new contents.</param>
    /// <param name="what">What it does, as told in the status line and when it is undone.</param>
    public static Step<GridState> Propose(GridState state, ImmutableArray<CellChange> changes, string what)
    {
        ArgumentNullException.ThrowIfNull(state);
        PlanRevision next = Put(state.Plan, changes, null);
        List<Finding> against = [.. Against(state, next, changes)];
        return against.Count == 0
            ? Change(state, next, what)
            : Step.To(state with
            {
                Mode = GridMode.Reason,
                Entry = new CellEntry(
                    LineEntry.Of(state.Plan.At(changes[0].Address)?.Pin?.Reason ?? ""),
                    Proposed: new(changes, what, string.Join(" ", against.Select(FindingWords.Line)))),
                Status = $"Against a safety rule: give a reason, or Esc leaves the {(changes.Length == 1 ? "cell as it was" : "cells as they were")}.",
            });
    }

    /// <summary>Puts in the edit that waited for its reason.</summary>
    public static Step<GridState> WithReason(GridState state, ProposedEdit edit, string reason)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(edit);
        return Change(state, Put(state.Plan, edit.Changes, reason), $"{edit.What}, with a reason");
    }

    /// <summary>Pins the cell under the cursor as it is, so that no draft changes it.</summary>
    public static Step<GridState> Pin(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        CellContent? content = state.Plan.At(state.Cursor)?.Content;
        return Propose(state, [new(state.Cursor, content)], $"{Place(state)} pinned as {Shown(state, content)}");
    }

    /// <summary>Gives the cell under the cursor back to the engine.</summary>
    public static Step<GridState> Unpin(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        PlanRevision next = PlanEdit.Unpin(state.Plan, state.Cursor);
        return Change(state, next, $"{Place(state)} unpinned, back to {Shown(state, next.At(state.Cursor)?.Content)}");
    }

    /// <summary>Does what a finding offers as its cure.</summary>
    public static Step<GridState> Cure(GridState state, Cure cure)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(cure);
        return Change(state, PlanEdit.Apply(state.Plan, cure), $"cure taken: {cure.Text.TrimEnd('.')}");
    }

    /// <summary>Why a cure cannot be done; null when it can.</summary>
    public static string? WhyNotCure(GridState state, Finding? finding)
    {
        ArgumentNullException.ThrowIfNull(state);
        return WhyNotChange(state) ?? (finding is null ? "There is no finding here."
            : finding.Cure is not { } cure ? "This finding offers no cure; its text says what it rests on."
            : cure.Changes.IsEmpty ? $"Only a person can do this: {cure.Text}"
            : cure.Changes.Select(change => PlanEdit.WhyNot(state.Plan, change.Address)).FirstOrDefault(reason => reason is not null));
    }

    /// <summary>Why the person cannot change the plan at all; null when they can.</summary>
    public static string? WhyNotChange(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Review?.WhyNotChange;
    }

    /// <summary>Takes the last change back.</summary>
    public static Step<GridState> Undo(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableStack<PlanChange> rest = state.Done.Pop(out PlanChange change);
        return Kept(state.WithPlan(change.Plan) with
        {
            Done = rest,
            Undone = state.Undone.Push(new(state.Plan, change.What)),
            Status = $"Undid: {change.What}.",
        });
    }

    /// <summary>Takes the change taken back again.</summary>
    public static Step<GridState> Redo(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableStack<PlanChange> rest = state.Undone.Pop(out PlanChange change);
        return Kept(state.WithPlan(change.Plan) with
        {
            Undone = rest,
            Done = state.Done.Push(new(state.Plan, change.What)),
            Status = $"Redid: {change.What}.",
        });
    }

    /// <summary>Takes a plan that was drafted anew, as a change that can be undone.</summary>
    public static Step<GridState> TakeAnew(GridState state, PlanRevision fresh)
    {
        ArgumentNullException.ThrowIfNull(state);
        return Change(state, fresh, "plan drafted anew from today; pinned cells and past weeks stayed");
    }

    /// <summary>Puts another plan in place of the present one, as a step that can be undone and is kept as a draft.</summary>
    internal static Step<GridState> Change(GridState state, PlanRevision next, string what) => Kept(state.WithPlan(next) with
    {
        Mode = state.Mode == GridMode.Findings ? GridMode.Findings : GridMode.Grid,
        Entry = null,
        Done = state.Done.Push(new(state.Plan, what)),
        Undone = [],
        Status = char.ToUpperInvariant(what[0]) + what[1..] + ".",
    });

    private static Step<GridState> Kept(GridState state) =>
        Step.To(state, state.IsUnsaved ? new KeepDraft(state.Plan) : new DropDraft());

    private static PlanRevision Put(PlanRevision plan, ImmutableArray<CellChange> changes, string? reason) =>
        changes.Aggregate(plan, (next, change) => PlanEdit.Set(next, change.Address, change.Content, reason));

    // What the edit runs into: a severe finding or a stop on one of the cells themselves, or one that the plan did not have before.
    private static IEnumerable<Finding> Against(GridState state, PlanRevision next, ImmutableArray<CellChange> changes) =>
        state.Desk.Check(next).Where(finding => finding.Severity >= Severity.Severe
            && (finding.Cells.Any(cell => changes.Any(change => change.Address == cell))
                || !state.Findings.Any(before => before.Rule == finding.Rule && before.Cells.SequenceEqual(finding.Cells))));

    private static string Place(GridState state) => $"{state.Lane.Title}, week {state.Week}";

    private static string Shown(GridState state, CellContent? content) =>
        content is null ? "empty" : CellNotation.Text(state.Lane, content, state.Desk.Library);
}
