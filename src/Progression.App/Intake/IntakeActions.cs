using Progression.App.Actions;
using Progression.App.Forms;
using Progression.Core.Drafting;
using static Progression.App.Actions.ActionRow;

namespace Progression.App.Intake;

/// <summary>The one table of the keys of the form of a case.</summary>
public static class IntakeActions
{
    private const int Page = 10;

    /// <summary>The table.</summary>
    public static ActionTable<IntakeState> Table { get; } = new(
        state => state.Mode.ToString(),
        [
            .. Lines().In(nameof(IntakeMode.Form), "Typing a case"),
            .. Regimens().In(nameof(IntakeMode.Regimens), "Choosing a regimen"),
            .. CommonRows.Help<IntakeState>(state => state with { Mode = state.HelpFor, Scroll = 0 }, Scrolled).In(nameof(IntakeMode.Help), "Reading the help"),
        ]);

    private static IEnumerable<ScreenAction<IntakeState>> Lines() =>
    [
        HelpOn(["F1"]),
        .. FormKeys.Lines<IntakeState>(state => state.Form, (state, form) => state with { Form = form, Status = "" }, state => Step.To(IntakeFlow.HandIn(state))),
        Does<IntakeState>("finish", ["Ctrl+S"], "take the case and go on", IntakeFlow.Finish).Hinted(3, "go on"),
        Does<IntakeState>("leave", ["Esc"], "leave the form; nothing is saved", IntakeFlow.Leave).Hinted(4, "leave").AsBack(),
        Shows<IntakeState>("regimens", ["F2"], "go through the regimens, with what each leaves open", IntakeFlow.Choose).Hinted(6, "regimens"),
        Does<IntakeState>("screening", ["F4"], "leave for the screening of the case", state => Step.To(state, new GoToScreening()))
            .Unless(state => state.Desk.Case is null || state.Form.IsTouched ? "Ctrl+S saves the case first; the screening of a new one comes next." : null),
        CommonRows.Repaint<IntakeState>(),
    ];

    private static IEnumerable<ScreenAction<IntakeState>> Regimens() =>
    [
        HelpOn(["F1", "?"]),
        Shows<IntakeState>("take", ["Enter"], "take this regimen", IntakeFlow.Take).Hinted(2, "take").Unless(WhyNot),
        Shows<IntakeState>("down", ["Down", "j", "Tab"], "the regimen below", state => IntakeFlow.To(state, state.Index + 1)).Hinted(4, "below"),
        Shows<IntakeState>("up", ["Up", "k", "Shift+Tab"], "the regimen above", state => IntakeFlow.To(state, state.Index - 1)).Hinted(5, "above"),
        Shows<IntakeState>("first", ["Home"], "the first regimen", state => IntakeFlow.To(state, 0)),
        Shows<IntakeState>("last", ["End"], "the last regimen", state => IntakeFlow.To(state, state.Desk.Library.Regimens.Count)),
        Shows<IntakeState>("on", ["]", "PgDn"], "read on below the list", state => Scrolled(state, Page)).Hinted(6, "read on"),
        Shows<IntakeState>("back-up", ["[", "PgUp"], "read back", state => Scrolled(state, -Page)),
        Shows<IntakeState>("back", ["Esc", "q"], "back to the form, leaving the regimen as it was", state => state with { Mode = IntakeMode.Form, Scroll = 0 }).Hinted(3, "back").AsBack(),
        CommonRows.Repaint<IntakeState>(),
    ];

    private static ScreenAction<IntakeState> HelpOn(string[] keys) =>
        Shows<IntakeState>("help", [.. keys], "this page", state => state with { HelpFor = state.Mode, Mode = IntakeMode.Help, Scroll = 0 }).Hinted(1, "help");

    private static IntakeState Scrolled(IntakeState state, int lines)
    {
        int count = state.Mode == IntakeMode.Help ? IntakePicture.HelpLines(state).Count : RegimenPage.Details(state).Count();
        return state with { Scroll = Math.Clamp(state.Scroll + lines, 0, Math.Max(0, count - 1)) };
    }

    private static string? WhyNot(IntakeState state) => PlanDraft.LeftOpen(IntakeFlow.Regimens(state)[state.Index]) is { IsEmpty: false } open
        ? $"It cannot be planned: it leaves open {string.Join(", ", open)}."
        : null;
}
