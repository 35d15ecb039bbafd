using Progression.App.Forms;
using Progression.App.Pictures;

namespace Progression.App.Intake;

/// <summary>Lays out the form of a case: a line for each thing that is known, what follows from it beside it.</summary>
public static class IntakePicture
{
    /// <summary>The picture of a state.</summary>
    public static Picture Draw(IntakeState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = FormScreen.Inside(size);
        IntakeWording words = new(state);
        int beside = size.Width - FormPicture.LeftOf(size.Width);
        (Picture body, IEnumerable<PictureRow> foot) = state.Mode switch
        {
            IntakeMode.Help => (FormScreen.Help(HelpLines(state), state.Scroll, size.Width), []),
            IntakeMode.Regimens => (RegimenPage.Draw(state, room), FormScreen.Wrapped("A field that a publication leaves open is never filled in. Empty in the form is the usual one.", size.Width, Ink.Plain)),
            _ => (FormPicture.Draw(state.Form, room, line => new FormBeside(PictureRow.Of(TextFit.Exactly(" " + words.Beside(line), beside).TrimEnd(), Ink.Quiet), words.Shown(line))),
                FormScreen.Foot(state.Form.Problem, words.Foot(state.Form.Current), size.Width)),
        };
        return FormScreen.Draw(IntakeScreen.Where(state), body, foot, (state.Status, IntakeActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(IntakeState state) =>
    [
        .. IntakeActions.Table.HelpPage(state.HelpFor.ToString()),
        "Days", "  2026-11-12, 12 nov, nov 12 2026, tue, last tue, today, -3 (days from today), op+7 or d7 (days from the operation), 25.11. where only one order makes a day",
        "Words", "  the beginning is enough: l, r, wbat, as, full; two-h for the regimen that begins so",
        "An empty line is not known, which is never zero and never no. It suggests; a clinician decides.",
    ];
}
