using Progression.App.Actions;

namespace Progression.App.Chart;

/// <summary>The chart, ready for the shell. It asks for nothing but to be left.</summary>
public static class ChartScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ChartState> Definition { get; } = new()
    {
        Actions = ChartActions.Table,
        Draw = ChartPicture.Draw,
        Say = (state, text) => state with { Status = text },
    };
}
