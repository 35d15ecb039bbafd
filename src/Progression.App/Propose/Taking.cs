using System.Collections.Immutable;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

namespace Progression.App.Propose;

/// <summary>Taking changes and leaving them. Changes that only make sense together go together; a pinned cell stays as it is.</summary>
public static class Taking
{
    /// <summary>The changes that go together with one, itself among them.</summary>
    public static ImmutableArray<ProposedChange> Group(ImmutableArray<ProposedChange> changes, ProposedChange change)
    {
        ArgumentNullException.ThrowIfNull(change);
        HashSet<CellAddress> group = [change.Address];
        bool grown = true;
        while (grown)
        {
            grown = false;
            foreach (ProposedChange other in changes)
            {
                if (other.With is { } partner && group.Contains(other.Address) != group.Contains(partner))
                {
                    grown |= group.Add(other.Address) | group.Add(partner);
                }
            }
        }

        return [.. changes.Where(other => group.Contains(other.Address))];
    }

    /// <summary>Why a change cannot be taken; null when it can.</summary>
    public static string? WhyNot(ProposeState state, ProposedChange? change)
    {
        ArgumentNullException.ThrowIfNull(state);
        return change is null ? "Nothing is proposed."
            : change.IsPinned ? $"{state.Place(change.Address)} is pinned: it was set by hand and stays. Unpin it in the grid to let the draft have it."
            : Group(state.Desk.Changes, change).FirstOrDefault(other => other.IsPinned) is { } pinned ? $"It only makes sense together with {state.Place(pinned.Address)}, which is pinned."
            : null;
    }

    /// <summary>Takes the change under the cursor, with those that go with it, or leaves them again.</summary>
    public static ProposeState Turn(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableArray<ProposedChange> group = Group(state.Desk.Changes, state.Chosen!);
        IEnumerable<CellAddress> cells = group.Select(change => change.Address);
        bool leave = state.Taken.Contains(state.Chosen!.Address);
        return state with
        {
            Taken = leave ? state.Taken.Except(cells) : state.Taken.Union(cells),
            Status = group.Length == 1 ? "" : $"{(leave ? "Left" : "Taken")} together: {string.Join("; ", cells.Select(state.Place))}.",
        };
    }

    /// <summary>Takes every change that can be taken.</summary>
    public static ProposeState All(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        ImmutableHashSet<CellAddress> taken = [.. state.Desk.Changes.Where(change => WhyNot(state, change) is null).Select(change => change.Address)];
        int left = state.Desk.Changes.Length - taken.Count;
        return state with { Taken = taken, Status = left == 0 ? "All are taken." : $"{taken.Count} are taken; {left} cannot be, because of a pinned cell." };
    }

    /// <summary>Leaves every change.</summary>
    public static ProposeState None(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Taken = [], Status = "None is taken." };
    }
}
