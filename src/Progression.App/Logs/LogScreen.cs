using Progression.App.Actions;

namespace Progression.App.Logs;

/// <summary>The session log, ready for the shell.</summary>
public static class LogScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<LogState> Definition { get; } = new()
    {
        Actions = LogActions.Table,
        Draw = LogPicture.Draw,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == LogMode.Form ? state with { Form = state.Form.With(line => line.Put(text)) } : null,
    };
}
