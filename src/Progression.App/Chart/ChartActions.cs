using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Chart;

/// <summary>The one table of the chart's keys.</summary>
public static class ChartActions
{
    private const int PageWidth = 78;

    /// <summary>The table.</summary>
    public static ActionTable<ChartState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Plot().In(nameof(ChartMode.Plot), "Chart"),
            .. Page("show the chart", "t").In(nameof(ChartMode.Numbers), "Numbers"),
            .. Page("back to the chart", "w").In(nameof(ChartMode.Why), "Reading why"),
            .. Help().In(nameof(ChartMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<ChartState>> Plot() =>
    [
        HelpOn(),
        .. Measures(),
        Shows<ChartState>("week-before", ["Left", "h"], "the week before", state => state.AtWeek(state.Week - 1)).Hinted(7, "week"),
        Shows<ChartState>("week-after", ["Right", "l"], "the week after", state => state.AtWeek(state.Week + 1)),
        Shows<ChartState>("first-week", ["Home"], "the first week", state => state.AtWeek(1)),
        Shows<ChartState>("last-week", ["End"], "the last week shown", state => state.AtWeek(state.LastWeek)),
        Shows<ChartState>("numbers", ["t"], "the same as a table of numbers", state => To(state, ChartMode.Numbers)).Hinted(4, "numbers").Unless(WhyNothing),
        Shows<ChartState>("why", ["Enter", "w"], "what the chart rests on", state => To(state, ChartMode.Why)).Hinted(3, "why").Unless(WhyNothing),
        Shows<ChartState>("zoom", ["z"], "the near weeks, or all weeks of the forecast", state => (state with { IsWhole = !state.IsWhole }).AtWeek(state.Week)).Hinted(5, "zoom").Unless(WhyNothing),
        Shows<ChartState>("read-on", ["]"], "read on in the words", state => Scroll(state, 3)),
        Shows<ChartState>("read-back", ["["], "read back in the words", state => Scroll(state, -3)),
        Does<ChartState>("leave", ["Esc", "q"], "back to where you came from", state => Step.To(state, new LeaveScreen())).Hinted(6, "back").AsBack(),
        CommonRows.Repaint<ChartState>(),
    ];

    private static IEnumerable<ScreenAction<ChartState>> Page(string back, string key) =>
    [
        HelpOn(),
        .. CommonRows.Reading<ChartState>(Scroll),
        Shows<ChartState>("back", ["Esc", key, "q", "Enter"], back, state => state with { Mode = ChartMode.Plot, Scroll = 0 }).Hinted(6, "back").AsBack(),
        Shows<ChartState>("next", ["n", "Tab"], "the next measure", state => state.To(state.Index + 1)),
        Shows<ChartState>("before", ["p", "Shift+Tab"], "the measure before", state => state.To(state.Index - 1)),
        CommonRows.Repaint<ChartState>(),
    ];

    private static IEnumerable<ScreenAction<ChartState>> Measures() =>
    [
        Shows<ChartState>("next", ["n", "Tab", "Down", "j"], "the next measure", state => state.To(state.Index + 1)).Hinted(2, "next measure")
            .Unless(state => state.Index >= state.Subjects.Length - 1 ? "This is the last measure." : null),
        Shows<ChartState>("before", ["p", "Shift+Tab", "Up", "k"], "the measure before", state => state.To(state.Index - 1))
            .Unless(state => state.Index == 0 ? "This is the first measure." : null),
    ];

    private static IEnumerable<ScreenAction<ChartState>> Help() =>
        CommonRows.Help<ChartState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scroll);

    private static ScreenAction<ChartState> HelpOn() =>
        Shows<ChartState>("help", ["F1", "?"], "this page", state => state with { HelpFor = state.Mode, Mode = ChartMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ChartState To(ChartState state, ChartMode mode) => state with { Mode = mode, Scroll = 0, Status = "" };

    private static ChartState Scroll(ChartState state, int lines)
    {
        int count = state.Mode == ChartMode.Help ? ChartPicture.HelpLines(state).Count : ChartPicture.PageLines(state, PageWidth).Count;
        return state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, count - 1)) };
    }

    private static string? WhyNothing(ChartState state) => state.Subject is null ? "Nothing has been measured yet." : null;
}
