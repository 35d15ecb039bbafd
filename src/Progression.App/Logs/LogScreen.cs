using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Logs;

/// <summary>The session log, ready for the shell.</summary>
public static class LogScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<LogState> Definition { get; } = new()
    {
        Actions = LogActions.Table,
        Draw = LogPicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == LogMode.Form ? state with { Form = state.Form.With(line => line.Put(text)) } : null,
        Aloud = LogAloud.Words,
    };

    internal static ScreenPlace Where(LogState state) => new("Session log")
    {
        Whose = CaseTitle.Of(state.Desk.Case),
        What = new LogReading(state).Day is { } day ? CaseTitle.ShortDay(day) : "",
        Kept = state.Form.IsTouched ? "not saved yet" : "",
        IsUnsaved = state.Form.IsTouched,
    };
}
