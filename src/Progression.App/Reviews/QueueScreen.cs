using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Reviews;

/// <summary>The queue of reviews, ready for the shell.</summary>
public static class QueueScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<QueueState> Definition { get; } = new()
    {
        Actions = QueueActions.Table,
        Draw = QueuePicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Aloud = QueueAloud.Words,
    };

    internal static ScreenPlace Where(QueueState state) => new("Reviews that wait") { Kept = QueueWords.Count(state) };
}
