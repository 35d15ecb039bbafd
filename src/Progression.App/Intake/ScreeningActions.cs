using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.People;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Intake;

/// <summary>The one table of the screening's keys.</summary>
public static class ScreeningActions
{
    private const int Page = 10;

    /// <summary>The table.</summary>
    public static ActionTable<ScreeningState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Questions().In(nameof(ScreeningMode.Questions), "Questions"),
            .. Rest().In(nameof(ScreeningMode.Rest), "The rest: asked, all no"),
            .. Aside("take the clearance").In(nameof(ScreeningMode.Clearance), "A clearance"),
            .. Aside("take the day").In(nameof(ScreeningMode.Day), "The day of the screening"),
            .. CommonRows.Help<ScreeningState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, (state, lines) => Scrolled(state, lines, ScreeningPicture.HelpLines(state).Count))
                .In(nameof(ScreeningMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<ScreeningState>> Questions() =>
    [
        HelpOn(["F1", "?"]),
        Answers("yes", "y", "yes", Answer.Yes).Hinted(2, "yes"),
        Answers("no", "n", "no, and on to the next question", Answer.No).Hinted(3, "no"),
        Answers("unknown", "u", "asked, and not known", Answer.Unknown).Hinted(4, "not known"),
        Shows<ScreeningState>("rest", ["a"], "the rest: asked, all no (asks once more)", ScreeningFlow.AskRest).Hinted(5, "rest: all no").Unless(ScreeningFlow.WhyNoRest),
        Does<ScreeningState>("finish", ["Ctrl+S"], "save the answers and go on", ScreeningFlow.Finish).Hinted(6, "go on").Unless(ScreeningFlow.WhyNotFinish),
        Shows<ScreeningState>("clearance", ["c"], "a named clinician's clearance of a yes", ScreeningFlow.AskClearance).Hinted(7, "clearance").Unless(ScreeningFlow.WhyNoClearance),
        Shows<ScreeningState>("day", ["d"], "the day on which it was asked", ScreeningFlow.AskDay),
        Shows<ScreeningState>("take-back", ["Backspace", "Delete"], "take an answer back: not asked", ScreeningFlow.TakeBack).Unless(ScreeningFlow.WhyNoTakingBack),
        Does<ScreeningState>("leave", ["Esc", "q"], "leave; on the way to a first plan this skips it", ScreeningFlow.Leave).Hinted(8, "leave or skip").AsBack(),
        Shows<ScreeningState>("up", ["Up", "k", "Shift+Tab"], "the question above", state => state.To(state.Index - 1)),
        Shows<ScreeningState>("down", ["Down", "j", "Tab", "Enter"], "keep the answer, on to the next", state => state.To(state.Index + 1)).Hinted(9, "on"),
        Shows<ScreeningState>("page-up", ["PgUp"], "a page up", state => state.To(state.Index - Page)),
        Shows<ScreeningState>("page-down", ["PgDn", "Ctrl+N"], "a page down", state => state.To(state.Index + Page)),
        Shows<ScreeningState>("first", ["Home"], "the first question", state => state.To(0)),
        Shows<ScreeningState>("last", ["End"], "the last question", state => state.To(state.Library.Screening.Length)),
        Shows<ScreeningState>("read-on", ["]"], "read on below the questions", state => Scrolled(state, 1, ScreeningPicture.Below(state).Count)),
        Shows<ScreeningState>("read-back", ["["], "read back", state => Scrolled(state, -1, ScreeningPicture.Below(state).Count)),
        CommonRows.Repaint<ScreeningState>(),
    ];

    private static IEnumerable<ScreenAction<ScreeningState>> Rest() =>
    [
        HelpOn(["F1", "?"]),
        Shows<ScreeningState>("yes", ["y"], "yes: each was asked, and each answer was no", ScreeningFlow.TakeRest).Hinted(2, "asked, all no"),
        Shows<ScreeningState>("no", ["n", "Esc"], "no, back to the questions", ScreeningFlow.Back).Hinted(3, "back").AsBack(),
        CommonRows.Repaint<ScreeningState>(),
    ];

    private static IEnumerable<ScreenAction<ScreeningState>> Aside(string take) =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<ScreeningState>(state => state.Aside!, (state, aside) => state with { Aside = aside, Status = "" }, state => Step.To(ScreeningFlow.HandInAside(state))),
        Shows<ScreeningState>("finish", ["Ctrl+S"], take, ScreeningFlow.TakeAside).Hinted(3, "take all"),
        Shows<ScreeningState>("back", ["Esc"], "back, leaving it as it was", ScreeningFlow.Back).Hinted(4, "back").AsBack(),
        CommonRows.Repaint<ScreeningState>(),
    ];

    private static ScreenAction<ScreeningState> Answers(string id, string key, string help, Answer answer) =>
        Shows<ScreeningState>(id, [key], help, state => ScreeningFlow.Answer(state, answer)).Unless(ScreeningFlow.WhyNoAnswer);

    private static ScreenAction<ScreeningState> HelpOn(string[] keys) =>
        Shows<ScreeningState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = ScreeningMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ScreeningState Scrolled(ScreeningState state, int lines, int total) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, total - 1)) };
}
