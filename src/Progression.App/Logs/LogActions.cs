using Progression.App.Actions;
using Progression.App.Forms;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Logs;

/// <summary>The one table of the session log's keys.</summary>
public static class LogActions
{
    /// <summary>The table.</summary>
    public static ActionTable<LogState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Lines().In(nameof(LogMode.Form), "Typing a session"),
            .. Again().In(nameof(LogMode.Again), "A second session of the day"),
            .. CommonRows.Help<LogState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scrolled).In(nameof(LogMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<LogState>> Lines() =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<LogState>(state => state.Form, (state, form) => state with { Form = form, Status = "" }, LogFlow.HandIn),
        Does<LogState>("finish", ["Ctrl+S"], "take the session; lines not gone to stay as they stand", LogFlow.Finish).Hinted(3, "done"),
        Does<LogState>("leave", ["Esc"], "leave the form; nothing is saved", LogFlow.Leave).Hinted(4, "leave").AsBack(),
        CommonRows.Repaint<LogState>(),
    ];

    private static IEnumerable<ScreenAction<LogState>> Again() =>
    [
        HelpOn(["F1", "?"]),
        Does<LogState>("yes", ["y"], "yes, it is another session", state => LogFlow.Finish(state with { Mode = LogMode.Form, IsAgain = true })).Hinted(2, "second session"),
        Shows<LogState>("no", ["n", "Esc"], "no, back to the form", state => state with { Mode = LogMode.Form, Form = state.Form.To(LogLines.Date), Status = "Nothing was taken." })
            .Hinted(3, "back").AsBack(),
        CommonRows.Repaint<LogState>(),
    ];

    private static ScreenAction<LogState> HelpOn(string[] keys) =>
        Shows<LogState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = LogMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static LogState Scrolled(LogState state, int lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, LogPicture.HelpLines(state).Count - 1) };
}
