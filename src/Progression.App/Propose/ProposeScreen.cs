using Progression.App.Actions;

namespace Progression.App.Propose;

/// <summary>The proposal, ready for the shell. It asks for <see cref="AcceptProposal"/> and <see cref="ShowComparison"/>.</summary>
public static class ProposeScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ProposeState> Definition { get; } = new()
    {
        Actions = ProposeActions.Table,
        Draw = ProposePicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = Deciding.Type,
    };
}
