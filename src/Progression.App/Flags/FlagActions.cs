using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.People;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Flags;

/// <summary>The one table of the red-flag checklist's keys.</summary>
public static class FlagActions
{
    private const int Page = 10;
    private const int Narrowest = 78;

    /// <summary>The table.</summary>
    public static ActionTable<FlagListState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Questions().In(nameof(FlagMode.Questions), "Questions"),
            .. Note().In(nameof(FlagMode.Note), "Closing a flag"),
            .. CommonRows.Help<FlagListState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, (state, lines) => Scrolled(state, lines, FlagPicture.HelpLines(state).Count))
                .In(nameof(FlagMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<FlagListState>> Questions() =>
    [
        HelpOn(["F1", "?"]),
        Answers("yes", "y", "yes; the checklist of the flag is shown", Answer.Yes).Hinted(2, "yes"),
        Answers("no", "n", "no, and on to the next question", Answer.No).Hinted(3, "no"),
        Answers("unknown", "u", "asked, and not known", Answer.Unknown).Hinted(4, "not known"),
        Shows<FlagListState>("take-back", ["Backspace", "Delete"], "take an answer back: not asked", FlagFlow.TakeBack).Unless(FlagFlow.WhyNoTakingBack),
        Shows<FlagListState>("close-flag", ["c"], "close the open flag with a note by name", FlagFlow.AskNote).Hinted(5, "close flag").Unless(FlagFlow.WhyNoNote),
        Does<FlagListState>("finish", ["Ctrl+S"], "keep the answers with today's visit", FlagFlow.Finish).Hinted(6, "done").Unless(FlagFlow.WhyNotFinish),
        Does<FlagListState>("leave", ["Esc", "q"], "leave; answers not kept stay open", FlagFlow.Leave).Hinted(7, "leave").AsBack(),
        Shows<FlagListState>("up", ["Up", "k", "Shift+Tab"], "the line above", state => state.To(state.Index - 1)),
        Shows<FlagListState>("down", ["Down", "j", "Tab", "Enter"], "the line below", state => state.To(state.Index + 1)).Hinted(8, "on"),
        Shows<FlagListState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<FlagListState>("page-down", ["PgDn"], "a page down", state => state.To(state.Index + Page)),
        Shows<FlagListState>("first", ["Home"], "the first question", state => state.To(0)),
        Shows<FlagListState>("last", ["End"], "the last question", state => state.To(state.Rows.Length)),
        Shows<FlagListState>("read-on", ["]"], "read on in the checklist", state => Scrolled(state, 1, FlagPicture.Below(state, Narrowest).Count)),
        Shows<FlagListState>("read-back", ["["], "read back", state => Scrolled(state, -1, FlagPicture.Below(state, Narrowest).Count)),
        CommonRows.Repaint<FlagListState>(),
    ];

    private static IEnumerable<ScreenAction<FlagListState>> Note() =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<FlagListState>(state => state.Note!, (state, note) => state with { Note = note, Status = "" }, FlagFlow.HandInNote),
        Does<FlagListState>("finish", ["Ctrl+S"], "close the flag with this note", FlagFlow.TakeNote).Hinted(3, "close flag"),
        Shows<FlagListState>("back", ["Esc"], "back; the flag stays open", state => state with { Mode = FlagMode.Questions, Note = null, Status = "The flag stays open." }).Hinted(4, "back").AsBack(),
        CommonRows.Repaint<FlagListState>(),
    ];

    private static ScreenAction<FlagListState> Answers(string id, string key, string help, Answer answer) =>
        Shows<FlagListState>(id, [key], help, state => FlagFlow.Answer(state, answer)).Unless(FlagFlow.WhyNoAnswer);

    private static ScreenAction<FlagListState> HelpOn(string[] keys) =>
        Shows<FlagListState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = FlagMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static FlagListState Scrolled(FlagListState state, int lines, int total) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, total - 1)) };
}
