using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.People;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Assess;

/// <summary>The one table of the assessment's keys.</summary>
public static class AssessActions
{
    /// <summary>The table.</summary>
    public static ActionTable<AssessState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Lines().In(nameof(AssessMode.Form), "Typing a visit"),
            .. Sign().In(nameof(AssessMode.Sign), "How an extension deficit is written"),
            .. Visit().In(nameof(AssessMode.Visit), "The day of the visit"),
            .. Aside("take what is typed").In(nameof(AssessMode.Detail), "How a reading was taken"),
            .. Aside("take the correction").In(nameof(AssessMode.Reason), "Why a visit is corrected"),
            .. Query().In(nameof(AssessMode.Query), "An odd value"),
            .. CommonRows.Help<AssessState>(Close, Scrolled).In(nameof(AssessMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<AssessState>> Lines() =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<AssessState>(state => state.Form, (state, form) => state with { Form = form, Status = "" }, state => Step.To(AssessFlow.HandIn(state))),
        Does<AssessState>("finish", ["Ctrl+S"], "take the visit; odd values are asked about first", AssessFlow.Finish).Hinted(3, "done"),
        Does<AssessState>("leave", ["Esc"], "leave the form; nothing is saved", AssessFlow.Leave).Hinted(4, "leave").AsBack(),
        Shows<AssessState>("detail", ["F2"], "device, position, rater of this value", AssessFlow.AskDetail).Hinted(6, "device").Unless(WhyNoDetail),
        Shows<AssessState>("sign", ["F3"], "how an extension deficit is written", state => state with { Mode = AssessMode.Sign, IsFinishing = false }),
        CommonRows.Repaint<AssessState>(),
    ];

    private static IEnumerable<ScreenAction<AssessState>> Sign() =>
    [
        HelpOn(["F1", "?"]),
        Does<AssessState>("positive", ["1"], "5 is 5 deg short of straight", state => AssessFlow.Answer(state, DeficitSign.Positive)).Hinted(2, "as 5"),
        Does<AssessState>("negative", ["2"], "-5 is 5 deg short of straight", state => AssessFlow.Answer(state, DeficitSign.Negative)).Hinted(3, "as -5"),
        Back("back to the value"),
        CommonRows.Repaint<AssessState>(),
    ];

    private static IEnumerable<ScreenAction<AssessState>> Visit() =>
    [
        HelpOn(["F1", "?"]),
        Shows<AssessState>("yes", ["y"], "yes; what was typed stays", AssessVisits.Take).Hinted(2, "yes"),
        Shows<AssessState>("no", ["n", "Esc"], "no, back to the day", AssessFlow.BackToDay).Hinted(3, "back to the day").AsBack(),
        CommonRows.Repaint<AssessState>(),
    ];

    private static IEnumerable<ScreenAction<AssessState>> Aside(string take) =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<AssessState>(state => state.Aside!, (state, aside) => state with { Aside = aside, Status = "" }, AssessFlow.HandInAside),
        Does<AssessState>("finish", ["Ctrl+S"], take, AssessFlow.TakeAside).Hinted(3, "take all"),
        Back("back to the visit, leaving this as it was"),
        CommonRows.Repaint<AssessState>(),
    ];

    private static IEnumerable<ScreenAction<AssessState>> Query() =>
    [
        HelpOn(["F1", "?"]),
        Does<AssessState>("right", ["y"], "it is right as typed; on to the next", AssessFlow.Confirm).Hinted(2, "it is right"),
        Shows<AssessState>("correct", ["Enter", "n", "Esc"], "back to the value", AssessFlow.BackToForm).Hinted(3, "correct it").AsBack(),
        CommonRows.Repaint<AssessState>(),
    ];

    private static ScreenAction<AssessState> HelpOn(string[] keys) =>
        Shows<AssessState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = AssessMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static ScreenAction<AssessState> Back(string help) => Shows<AssessState>("back", ["Esc"], help, AssessFlow.BackToForm).Hinted(4, "back").AsBack();

    private static AssessState Close(AssessState state) => state with { Mode = state.HelpFor, Scroll = 0 };

    private static AssessState Scrolled(AssessState state, int lines) => state with { Scroll = Math.Clamp(state.Scroll + lines, 0, AssessPicture.HelpLines(state).Count - 1) };

    private static string? WhyNoDetail(AssessState state) =>
        AssessLines.IsSign(state.Form.Current) || state.Form.Current.Id is AssessLines.Date or AssessLines.Rater ? "Device, position and rater belong to a measured value." : null;
}
