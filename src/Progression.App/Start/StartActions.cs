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
            .. Find().In(nameof(StartMode.Find), "Finding a case"),
            .. CommonRows.Help<StartState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scrolled).In(nameof(StartMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<StartState>> List() =>
    [
        HelpOn(["F1", "?"]),
        Does<StartState>("open", ["Enter"], "open the plan of the case", state => Ask(state, new OpenPlan(state.Chosen!.Code))).Hinted(2, "open").Unless(WhyNotOpen),
        Does<StartState>("new", ["n"], "a new case: its data, screening, first readings, plan", state => Ask(state, new NewCase())).Hinted(3, "new case"),
        Does<StartState>("change-case", ["i"], "the data of the case", state => Ask(state, new ChangeCase(state.Chosen!.Code))).Hinted(8, "data").Unless(WhyNotOpen),
        Does<StartState>("screen-case", ["S"], "the screening of the case", state => Ask(state, new ScreenCase(state.Chosen!.Code))).Hinted(9, "screening").Unless(WhyNotOpen),
        Shows<StartState>("find", ["/"], "find by code, knee or who saved, as you type", StartFind.Begin).Hinted(4, "find").Unless(WhyNoCases),
        Shows<StartState>("only", ["f"], "only those due, behind, unsigned, blocked, mine, drafts", state => StartFind.Filter(state, 1)).Hinted(5, "only").Unless(WhyNoCases),
        Shows<StartState>("only-back", ["F"], "the choice before", state => StartFind.Filter(state, -1)).Unless(WhyNoCases),
        Shows<StartState>("order", ["o"], "order by code, due, week, saved, behind", state => StartFind.Order(state, 1)).Unless(WhyNoCases),
        Shows<StartState>("order-back", ["O"], "the order before", state => StartFind.Order(state, -1)).Unless(WhyNoCases),
        Shows<StartState>("all", ["Esc"], "show all cases again", StartFind.Clear).Unless(state => state.Choice.Narrows ? null : "All cases are shown; q leaves.").AsBack(),
        Does<StartState>("read", ["Ctrl+R"], "read the list again", state => Ask(state, new ReadAgain())),
        Does<StartState>("demo", ["d"], "the demo scenario: invented cases in a store of their own", state => Ask(state, new ShowDemo())).Hinted(7, "demo")
            .Unless(state => state.IsDemo ? "This is the demo scenario." : null),
        Does<StartState>("reviews", ["r"], "the reviews that wait, by what was found and by age", state => Ask(state, new ShowReviews())),
        Does<StartState>("figures", ["c"], "the clinic's figures: weeks to each goal, adherence, stim", state => Ask(state, new ShowFigures())).Unless(WhyNoCases),
        Does<StartState>("library", ["b"], "the clinical library: figures, sources, standing", state => Ask(state, new BrowseLibrary())),
        Does<StartState>("settings", [","], "your settings: colours, symbols, wheel, blanking", state => Ask(state, new ShowSettings())),
        Does<StartState>("quit", ["q", "Ctrl+Q"], "leave", state => Step.To(state, new LeaveScreen())).Hinted(6, "quit").AsBack(),
        Shows<StartState>("up", ["Up", "k"], "the case above", state => state.To(state.Index - 1)),
        Shows<StartState>("down", ["Down", "j"], "the case below", state => state.To(state.Index + 1)),
        Shows<StartState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<StartState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<StartState>("first", ["Home", "g"], "the first case", state => state.To(0)),
        Shows<StartState>("last", ["End", "G"], "the last case", state => state.To(int.MaxValue)),
        CommonRows.Repaint<StartState>(),
    ];

    private static IEnumerable<ScreenAction<StartState>> Find() =>
    [
        HelpOn(["F1"]),
        Does<StartState>("open", ["Enter"], "open the plan of the case", state => Ask(state with { Mode = StartMode.List }, new OpenPlan(state.Chosen!.Code))).Hinted(2, "open").Unless(WhyNotOpen),
        Shows<StartState>("keep", ["Tab"], "back to the list, with what was found", StartFind.Keep).Hinted(3, "list"),
        Shows<StartState>("clear", ["Esc"], "show all cases again", StartFind.Clear).Hinted(4, "all").AsBack(),
        Shows<StartState>("up", ["Up"], "the case above", state => state.To(state.Index - 1)),
        Shows<StartState>("down", ["Down"], "the case below", state => state.To(state.Index + 1)),
        Shows<StartState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<StartState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        .. CommonRows.Typing<StartState>(StartFind.With, rank: 5),
        CommonRows.Repaint<StartState>(),
    ];

    private static ScreenAction<StartState> HelpOn(string[] keys) =>
        Shows<StartState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = StartMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static StartState Scrolled(StartState state, int lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, StartPicture.HelpLines(state).Count - 1) };

    private static Step<StartState> Ask(StartState state, ScreenEffect effect) => Step.To(state with { Status = "" }, effect);

    private static string? WhyNotOpen(StartState state) =>
        state.Chosen is not null ? null : WhyNoCases(state) ?? "No case is shown; Esc shows all.";

    private static string? WhyNoCases(StartState state) => state.Cases.IsEmpty ? "There is no case yet: n makes one, d shows the demo scenario." : null;
}
