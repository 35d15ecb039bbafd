using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Compare;

/// <summary>The one table of the comparison's keys.</summary>
public static class CompareActions
{
    private const int Page = 10;
    private const int PageWidth = 78;

    /// <summary>The table.</summary>
    public static ActionTable<CompareState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Rows().In(nameof(CompareMode.Table), "Comparison"),
            .. Why().In(nameof(CompareMode.Why), "Reading why"),
            .. Help().In(nameof(CompareMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<CompareState>> Rows() =>
    [
        HelpOn(),
        Shows<CompareState>("why", ["Enter", "w"], "what the changes of this measure rest on", state => state with { Mode = CompareMode.Why, Scroll = 0, Status = "" })
            .Hinted(2, "why").Unless(WhyNoRow),
        Does<CompareState>("chart", ["c"], "the chart of this measure", state => Step.To(state, new ShowChart(state.Chosen!.Measure.Id))).Hinted(3, "chart").Unless(WhyNoRow),
        Shows<CompareState>("older", ["Left", "h"], "older visits", state => state.BackBy(1)).Hinted(4, "older").Unless(WhyNotOlder),
        Shows<CompareState>("newer", ["Right", "l"], "newer visits; the newest is always shown", state => state.BackBy(-1)).Hinted(5, "newer")
            .Unless(state => state.Back == 0 ? "The newest visits are shown." : null),
        Does<CompareState>("leave", ["Esc", "q"], "back to where you came from", state => Step.To(state, new LeaveScreen())).Hinted(6, "back").AsBack(),
        Shows<CompareState>("up", ["Up", "k"], "the measure above", state => state.To(state.Index - 1)),
        Shows<CompareState>("down", ["Down", "j"], "the measure below", state => state.To(state.Index + 1)).Hinted(7, "below"),
        Shows<CompareState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<CompareState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<CompareState>("first", ["Home", "g"], "the first measure", state => state.To(0)),
        Shows<CompareState>("last", ["End", "G"], "the last measure", state => state.To(state.Comparison.Rows.Length)),
        Shows<CompareState>("read-on", ["]"], "read on below the table", state => Scroll(state, 3)),
        Shows<CompareState>("read-back", ["["], "read back below the table", state => Scroll(state, -3)),
        CommonRows.Repaint<CompareState>(),
    ];

    private static IEnumerable<ScreenAction<CompareState>> Why() =>
    [
        HelpOn(),
        .. CommonRows.Reading<CompareState>(Scroll),
        Shows<CompareState>("back", ["Esc", "Enter", "w", "q"], "back to the table", state => state with { Mode = CompareMode.Table, Scroll = 0 }).Hinted(6, "back").AsBack(),
        CommonRows.Repaint<CompareState>(),
    ];

    private static IEnumerable<ScreenAction<CompareState>> Help() =>
        CommonRows.Help<CompareState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scroll);

    private static ScreenAction<CompareState> HelpOn() =>
        Shows<CompareState>("help", ["F1", "?"], "this page", state => state with { HelpFor = state.Mode, Mode = CompareMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static CompareState Scroll(CompareState state, int lines)
    {
        int count = state.Mode switch
        {
            CompareMode.Help => ComparePicture.HelpLines(state).Count,
            CompareMode.Why => ComparePicture.WhyLines(state, PageWidth).Count,
            _ => state.Chosen is { } row ? ChangeText.Lines(row, PageWidth).Count : 0,
        };
        return state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, count - 1)) };
    }

    private static string? WhyNoRow(CompareState state) => state.Chosen is null ? "Nothing has been measured yet." : null;

    private static string? WhyNotOlder(CompareState state) => state.Back >= state.Comparison.Visits.Length - 2 ? "There are no older visits." : null;
}
