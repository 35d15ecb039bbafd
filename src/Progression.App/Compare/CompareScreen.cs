using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Compare;

/// <summary>The comparison, ready for the shell. It asks for <see cref="ShowChart"/>.</summary>
public static class CompareScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<CompareState> Definition { get; } = new()
    {
        Actions = CompareActions.Table,
        Draw = ComparePicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = CompareAloud.Words,
    };

    internal static ScreenPlace Where(CompareState state) => new("Comparison")
    {
        Whose = state.Title,
        What = state.Chosen?.Measure.Title ?? "",
        Kept = state.Comparison.Visits.Length == 1 ? "1 visit" : $"{state.Comparison.Visits.Length} visits",
    };
}
