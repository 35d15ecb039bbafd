using Progression.App.Actions;

namespace Progression.App.Propose;

/// <summary>Accepting what is taken; when nothing is, the reason is asked for first.</summary>
public static class Deciding
{
    /// <summary>Accepts what is taken, or asks why nothing is.</summary>
    public static Step<ProposeState> Accept(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Taken.IsEmpty && state.Desk.Changes.Any(change => !change.IsPinned)
            ? Step.To(state with { Mode = ProposeMode.Reason, Reason = LineEntry.Empty, Status = "" })
            : Step.To(state with { Status = "" }, new AcceptProposal(state.Taken, null));
    }

    /// <summary>Takes the reason; without one nothing is decided.</summary>
    public static Step<ProposeState> HandIn(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        string reason = state.Reason!.Text.Trim();
        return reason.Length == 0
            ? Step.To(state with { Status = "A reason is needed where nothing is taken; Esc goes back to the changes." })
            : Step.To(state with { Mode = ProposeMode.List, Reason = null, Status = "" }, new AcceptProposal([], reason));
    }

    /// <summary>Back to the changes; nothing is decided.</summary>
    public static ProposeState Cancel(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = ProposeMode.List, Reason = null, Status = "Nothing is decided." };
    }

    /// <summary>The state with the line changed.</summary>
    public static ProposeState With(ProposeState state, Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(change);
        return state with { Reason = change(state.Reason!), Status = "" };
    }

    /// <summary>Typed or pasted text; null where none is taken.</summary>
    public static ProposeState? Type(ProposeState state, string text)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state is { Mode: ProposeMode.Reason, Reason: not null } ? With(state, line => line.Put(text)) : null;
    }

    /// <summary>Why nothing can be accepted; null when it can.</summary>
    public static string? WhyNot(ProposeState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Desk.Assessment is null ? "No proposal could be made, so there is nothing to accept." : null;
    }
}
