using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Chart;

/// <summary>The chart, ready for the shell. It asks for nothing but to be left.</summary>
public static class ChartScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<ChartState> Definition { get; } = new()
    {
        Actions = ChartActions.Table,
        Draw = ChartPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = ChartAloud.Words,
    };

    internal static ScreenPlace Where(ChartState state) => new("Chart")
    {
        Whose = state.Title,
        What = state.Subject is { } subject ? $"{subject.Measure.Title}, week {state.Week}" : "",
        Kept = state.Subjects.IsEmpty ? "" : $"measure {state.Index + 1} of {state.Subjects.Length}",
    };
}
