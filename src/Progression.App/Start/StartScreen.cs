using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Start;

/// <summary>The start screen, ready for the shell.</summary>
public static class StartScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<StartState> Definition { get; } = new()
    {
        Actions = StartActions.Table,
        Draw = StartPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = StartAloud.Words,
        Type = StartFind.Type,
    };

    internal static ScreenPlace Where(StartState state) => new(state.IsDemo ? "Demo scenario: invented cases" : $"Cases of {state.Folder}")
    {
        Kept = StartList.Count(state),
    };
}
