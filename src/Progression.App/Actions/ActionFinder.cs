using static Progression.App.Actions.ActionRow;

namespace Progression.App.Actions;

/// <summary>Finds an action of any screen by its words. It lies over the foot of that screen.</summary>
public static class ActionFinder
{
    private const int Page = 5;

    /// <summary>Its keys.</summary>
    public static ActionTable<FindState> Table { get; } = new(
        state => state.Mode.ToString(),
        [.. Lines().In(nameof(FindMode.Line), "Finding an action"), .. Help().In(nameof(FindMode.Help), "Reading the help")],
        isFound: false);

    /// <summary>The screen.</summary>
    public static ScreenDefinition<FindState> Definition { get; } = new()
    {
        Actions = Table,
        Draw = FindPicture.Draw,
        Where = state => state.Below.Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == FindMode.Line ? state.With(line => line.Put(text)) : null,
        Aloud = new()
        {
            Here = state => state.Found.Select(FindPicture.Words),
            Read = (state, part) => part.Length == 0 ? state.Found.Select(FindPicture.Words) : null,
            Asks = _ => new ScreenQuestion("Words of the action"),
        },
    };

    /// <summary>The finder over a screen.</summary>
    public static Frame Over(Frame below) => new Frame<FindState>(Definition, new FindState(below));

    private static IEnumerable<ScreenAction<FindState>> Lines() =>
    [
        Shows<FindState>("help", ["F1"], "this page", state => state with { Mode = FindMode.Help, Scroll = 0 }).Hinted(1, "help"),
        Does<FindState>("take", ["Enter"], "do the action chosen", Take).Hinted(2, "do it"),
        Does<FindState>("leave", ["Esc", "Ctrl+P"], "back to the screen; nothing is done", state => Step.To(state, new LeaveScreen())).Hinted(3, "leave").AsBack(),
        Shows<FindState>("down", ["Down", "Tab"], "the action below", state => state.To(state.Index + 1)).Hinted(4, "below"),
        Shows<FindState>("up", ["Up", "Shift+Tab"], "the action above", state => state.To(state.Index - 1)).Hinted(5, "above"),
        Shows<FindState>("page-down", ["PgDn"], "a few actions down", state => state.To(state.Index + Page)),
        Shows<FindState>("page-up", ["PgUp"], "a few actions up", state => state.To(state.Index - Page)),
        .. CommonRows.Typing<FindState>((state, change) => state.With(change)).Select(row => row with { HintRank = null, Hint = "" }),
        CommonRows.Repaint<FindState>(),
    ];

    private static IEnumerable<ScreenAction<FindState>> Help() =>
    [
        Shows<FindState>("close", ["F1", "?", "Esc", "q", "Enter"], "back to the line", state => state with { Mode = FindMode.Line }).Hinted(1, "close help").AsBack(),
        .. CommonRows.Reading<FindState>((state, lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, FindPicture.HelpLines.Count - 1) }),
        CommonRows.Repaint<FindState>(),
    ];

    private static Step<FindState> Take(FindState state) => state.Chosen switch
    {
        null => Step.To(state with { Status = "No action here has these words; Esc leaves." }),
        { WhyNot: { } reason } => Step.To(state with { Status = reason }),
        { } chosen => Step.To(state, new LeaveScreen(new DoAction(chosen.Id))),
    };
}
