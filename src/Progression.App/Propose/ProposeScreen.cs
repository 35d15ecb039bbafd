using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Propose;

/// <summary>The proposal, ready for the shell. It asks for <see cref="AcceptProposal"/> and <see cref="ShowComparison"/>.</summary>
public static class ProposeScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ProposeState> Definition { get; } = new()
    {
        Actions = ProposeActions.Table,
        Draw = ProposePicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = Deciding.Type,
        Aloud = ProposeAloud.Words,
    };

    internal static ScreenPlace Where(ProposeState state) => new("Proposal")
    {
        Whose = state.Desk.Title,
        What = state.Desk.Assessment is { } assessed ? $"after {CaseTitle.ShortDay(assessed)}" : "",
        Kept = state.Desk.Changes.IsEmpty ? "" : $"{state.Taken.Count} of {state.Desk.Changes.Length} taken",
    };
}
