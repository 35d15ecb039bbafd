using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Start;

/// <summary>The one table of the start screen's keys.</summary>
public static class StartActions
{
    private const int Page = 15;

    /// <summary>The table.</summary>
    public static ActionTable<StartState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. List().In(nameof(StartMode.List), "Cases"),
            .. Form().In(nameof(StartMode.Form), "A new case"),
            .. Help().In(nameof(StartMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<StartState>> List() =>
    [
        HelpOn(["F1", "?"]),
        Does<StartState>("open", ["Enter"], "open the plan of the case", state => Ask(state, new OpenPlan(state.Chosen!.Code))).Hinted(2, "open").Unless(WhyNotOpen),
        Shows<StartState>("new", ["n"], "a new case", StartForm.Begin).Hinted(3, "new case"),
        Does<StartState>("demo", ["d"], "the demo scenario: invented cases in a store of their own", state => Ask(state, new ShowDemo())).Hinted(4, "demo")
            .Unless(state => state.IsDemo ? "This is the demo scenario." : null),
        Does<StartState>("quit", ["q", "Ctrl+Q"], "leave", state => Step.To(state, new LeaveScreen())).Hinted(5, "quit"),
        Shows<StartState>("up", ["Up", "k"], "the case above", state => state.To(state.Index - 1)),
        Shows<StartState>("down", ["Down", "j"], "the case below", state => state.To(state.Index + 1)),
        Shows<StartState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<StartState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<StartState>("first", ["Home", "g"], "the first case", state => state.To(0)),
        Shows<StartState>("last", ["End", "G"], "the last case", state => state.To(state.Cases.Length)),
        Repaint(),
    ];

    private static IEnumerable<ScreenAction<StartState>> Form() =>
    [
        HelpOn(["F1"]),
        Does<StartState>("take", ["Enter", "Tab", "Down"], "take the line and go on; after the last the plan is drafted and saved", StartForm.HandIn).Hinted(2, "take line"),
        Shows<StartState>("above", ["Up", "Shift+Tab"], "the line above", StartForm.Up).Hinted(3, "line above"),
        Shows<StartState>("cancel", ["Esc"], "leave the form; nothing is saved", StartForm.Cancel).Hinted(4, "cancel"),
        Shows<StartState>("empty", ["Ctrl+U"], "empty the line", state => StartForm.With(state, _ => LineEntry.Empty)).Hinted(5, "empty line"),
        Shows<StartState>("start", ["Home", "Ctrl+A"], "the start of the line", state => StartForm.With(state, line => line.Start())),
        Shows<StartState>("end", ["End", "Ctrl+E"], "the end of the line", state => StartForm.With(state, line => line.End())),
        Shows<StartState>("left", ["Left"], "one letter left", state => StartForm.With(state, line => line.Left())),
        Shows<StartState>("right", ["Right"], "one letter right", state => StartForm.With(state, line => line.Right())),
        Shows<StartState>("rub-out", ["Backspace"], "rub out the letter before", state => StartForm.With(state, line => line.RubOut())),
        Shows<StartState>("delete", ["Delete"], "delete the letter at the cursor", state => StartForm.With(state, line => line.Delete())),
        Repaint(),
    ];

    private static IEnumerable<ScreenAction<StartState>> Help() =>
    [
        Shows<StartState>("close", ["F1", "?", "Esc", "q"], "back to where you were", state => state with { Mode = state.HelpFor, Scroll = 0 }).Hinted(1, "close help"),
        Shows<StartState>("on", ["Down", "j"], "read on", state => state with { Scroll = Math.Min(StartPicture.HelpLines(state).Count - 1, state.Scroll + 1) }).Hinted(2, "read on"),
        Shows<StartState>("back", ["Up", "k"], "read back", state => state with { Scroll = Math.Max(0, state.Scroll - 1) }).Hinted(3, "read back"),
        Repaint(),
    ];

    private static ScreenAction<StartState> HelpOn(string[] keys) =>
        Shows<StartState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = StartMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ScreenAction<StartState> Repaint() => Does<StartState>("repaint", ["Ctrl+L"], "draw the screen again", state => Step.To(state, new Repaint()));

    private static Step<StartState> Ask(StartState state, ScreenEffect effect) => Step.To(state with { Status = "" }, effect);

    private static string? WhyNotOpen(StartState state) =>
        state.Chosen is null ? "There is no case yet: n makes one, d shows the demo scenario." : null;
}
