using Progression.App.Actions;

namespace Progression.App.Grid;

/// <summary>The grid screen, ready for the shell.</summary>
public static class GridScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<GridState> Definition { get; } = new()
    {
        Actions = GridActions.Table,
        Draw = (state, size) => GridPicture.Draw(state, size, GridActions.Table),
        Say = (state, text) => state with { Status = text },
        Type = GridTyping.Type,
    };
}
