using Progression.App.Actions;

namespace Progression.App.Start;

/// <summary>The start screen, ready for the shell.</summary>
public static class StartScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<StartState> Definition { get; } = new()
    {
        Actions = StartActions.Table,
        Draw = StartPicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = StartForm.Type,
    };
}
