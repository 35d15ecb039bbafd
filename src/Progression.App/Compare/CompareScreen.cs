using Progression.App.Actions;

namespace Progression.App.Compare;

/// <summary>The comparison, ready for the shell. It asks for <see cref="ShowChart"/>.</summary>
public static class CompareScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<CompareState> Definition { get; } = new()
    {
        Actions = CompareActions.Table,
        Draw = ComparePicture.Draw,
        Say = (state, text) => state with { Status = text },
    };
}
