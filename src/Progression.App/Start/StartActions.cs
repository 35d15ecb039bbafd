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
            .. CommonRows.Help<StartState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scrolled).In(nameof(StartMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<StartState>> List() =>
    [
        HelpOn(["F1", "?"]),
        Does<StartState>("open", ["Enter"], "open the plan of the case", state => Ask(state, new OpenPlan(state.Chosen!.Code))).Hinted(2, "open").Unless(WhyNotOpen),
        Does<StartState>("new", ["n"], "a new case: its data, screening, first readings, plan", state => Ask(state, new NewCase())).Hinted(3, "new case"),
        Does<StartState>("change-case", ["i"], "the data of the case", state => Ask(state, new ChangeCase(state.Chosen!.Code))).Hinted(6, "data").Unless(WhyNotOpen),
        Does<StartState>("screen-case", ["S"], "the screening of the case", state => Ask(state, new ScreenCase(state.Chosen!.Code))).Hinted(7, "screening").Unless(WhyNotOpen),
        Does<StartState>("demo", ["d"], "the demo scenario: invented cases in a store of their own", state => Ask(state, new ShowDemo())).Hinted(4, "demo")
            .Unless(state => state.IsDemo ? "This is the demo scenario." : null),
        Does<StartState>("library", ["b"], "the clinical library: figures, sources, standing", state => Ask(state, new BrowseLibrary())),
        Does<StartState>("quit", ["q", "Ctrl+Q"], "leave", state => Step.To(state, new LeaveScreen())).Hinted(5, "quit"),
        Shows<StartState>("up", ["Up", "k"], "the case above", state => state.To(state.Index - 1)),
        Shows<StartState>("down", ["Down", "j"], "the case below", state => state.To(state.Index + 1)),
        Shows<StartState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<StartState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<StartState>("first", ["Home", "g"], "the first case", state => state.To(0)),
        Shows<StartState>("last", ["End", "G"], "the last case", state => state.To(state.Cases.Length)),
        CommonRows.Repaint<StartState>(),
    ];

    private static ScreenAction<StartState> HelpOn(string[] keys) =>
        Shows<StartState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = StartMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static StartState Scrolled(StartState state, int lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, StartPicture.HelpLines(state).Count - 1) };

    private static Step<StartState> Ask(StartState state, ScreenEffect effect) => Step.To(state with { Status = "" }, effect);

    private static string? WhyNotOpen(StartState state) =>
        state.Chosen is null ? "There is no case yet: n makes one, d shows the demo scenario." : null;
}
