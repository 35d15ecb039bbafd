using Progression.App.Actions;
using Progression.App.Forms;

namespace Progression.App.Logs;

/// <summary>The session log in words.</summary>
internal static class LogAloud
{
    public static ScreenAloud<LogState> Words { get; } = new() { Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string>? Here(LogState state) => state.Mode switch
    {
        LogMode.Form => FormAloud.Answered(state.Form, _ => ""),
        LogMode.Again => [LogPicture.SecondSession],
        _ => null,
    };

    private static IEnumerable<string>? Read(LogState state, string part) =>
        part.Length > 0 || state.Mode == LogMode.Help ? null : FormAloud.Read(state.Form, line => LogPicture.Beside(state, new LogReading(state), line));

    private static ScreenQuestion? Asks(LogState state)
    {
        LogReading reading = new(state);
        return state.Mode == LogMode.Form ? FormAloud.Asks(state.Form, reading.Allowed(state.Form.Current), LogPicture.Beside(state, reading, state.Form.Current)) : null;
    }

    private static LogState? Go(LogState state, string words) =>
        state.Mode == LogMode.Form && FormAloud.Go(state.Form, words) is { } there ? state with { Form = there, Status = "" } : null;
}
