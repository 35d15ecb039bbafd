using Progression.App.Actions;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Browse;

/// <summary>The table of the library's keys.</summary>
public static class BrowseActions
{
    private const int Page = 10;
    private const int PageWidth = 78;

    /// <summary>The table.</summary>
    public static ActionTable<BrowseState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. List().In(nameof(BrowseMode.List), "Library"),
            .. Finding().In(nameof(BrowseMode.Find), "Finding an entry"),
            .. Entry().In(nameof(BrowseMode.Entry), "Reading an entry"),
            .. Help().In(nameof(BrowseMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<BrowseState>> List() =>
    [
        HelpOn("F1", "?"),
        Shows<BrowseState>("look", ["/"], "find entries by words of theirs, as you type", state => state with { Mode = BrowseMode.Find, Status = "" }).Hinted(2, "find entry"),
        Shows<BrowseState>("read", ["Enter"], "the whole entry with its source", state => state with { Mode = BrowseMode.Entry, Scroll = 0, Status = "" }).Hinted(3, "read").Unless(WhyNone),
        Shows<BrowseState>("next-kind", ["Tab"], "the next kind of entry", state => state.ToKind(1)).Hinted(4, "next kind").Unless(WhyNone),
        Shows<BrowseState>("kind-before", ["Shift+Tab"], "the kind before", state => state.ToKind(-1)).Unless(WhyNone),
        Shows<BrowseState>("all", ["x"], "all entries again", state => state with { Find = LineEntry.Empty }).Hinted(5, "all")
            .Unless(state => state.Find.Text.Length == 0 ? "All entries are shown." : null),
        Does<BrowseState>("leave", ["Esc", "q"], "back to where you came from", state => Step.To(state, new LeaveScreen())).Hinted(6, "back").AsBack(),
        Shows<BrowseState>("up", ["Up", "k"], "the entry above", state => state.To(state.Index - 1)),
        Shows<BrowseState>("down", ["Down", "j"], "the entry below", state => state.To(state.Index + 1)).Hinted(7, "below"),
        Shows<BrowseState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<BrowseState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<BrowseState>("first", ["Home", "g"], "the first entry", state => state.To(0)),
        Shows<BrowseState>("last", ["End", "G"], "the last entry", state => state.To(state.Shown.Length)),
        Shows<BrowseState>("read-on", ["]"], "read on below the list", state => Scroll(state, 3)),
        Shows<BrowseState>("read-back", ["["], "read back below the list", state => Scroll(state, -3)),
        CommonRows.Repaint<BrowseState>(),
    ];

    private static IEnumerable<ScreenAction<BrowseState>> Finding() =>
    [
        HelpOn("F1"),
        Shows<BrowseState>("take", ["Enter", "Tab"], "go on in the list that was found", state => state with { Mode = BrowseMode.List }).Hinted(2, "to the list"),
        Shows<BrowseState>("clear", ["Esc"], "all entries again", state => state with { Mode = BrowseMode.List, Find = LineEntry.Empty }).Hinted(3, "all again").AsBack(),
        Shows<BrowseState>("down", ["Down"], "the entry below", state => state.To(state.Index + 1)).Hinted(4, "below"),
        Shows<BrowseState>("up", ["Up"], "the entry above", state => state.To(state.Index - 1)),
        .. CommonRows.Typing<BrowseState>((state, change) => state with { Find = change(state.Find), Scroll = 0, Status = "" }).Select(row => row with { HintRank = null, Hint = "" }),
        CommonRows.Repaint<BrowseState>(),
    ];

    private static IEnumerable<ScreenAction<BrowseState>> Entry() =>
    [
        HelpOn("F1", "?"),
        .. CommonRows.Reading<BrowseState>(Scroll),
        Shows<BrowseState>("next", ["n", "Tab"], "the next entry", state => state.To(state.Index + 1)),
        Shows<BrowseState>("before", ["p", "Shift+Tab"], "the entry before", state => state.To(state.Index - 1)),
        Shows<BrowseState>("back", ["Esc", "Enter", "q"], "back to the list", state => state with { Mode = BrowseMode.List, Scroll = 0 }).Hinted(6, "back").AsBack(),
        CommonRows.Repaint<BrowseState>(),
    ];

    private static IEnumerable<ScreenAction<BrowseState>> Help() =>
    [
        Shows<BrowseState>("close", ["F1", "?", "Esc", "q"], "back to where you were", state => state with { Mode = state.HelpFor, Scroll = 0 }).Hinted(1, "close help").AsBack(),
        .. CommonRows.Reading<BrowseState>(Scroll),
        CommonRows.Repaint<BrowseState>(),
    ];

    private static ScreenAction<BrowseState> HelpOn(params string[] keys) =>
        Shows<BrowseState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = BrowseMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static BrowseState Scroll(BrowseState state, int lines) =>
        state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, BrowsePicture.PageLines(state, PageWidth).Count - 1)) };

    private static string? WhyNone(BrowseState state) => state.Chosen is null ? "No entry has these words: x shows all." : null;
}
