using Progression.App.Forms;
using Progression.App.Pictures;

namespace Progression.App.Assess;

/// <summary>Lays out the assessment: the form with what is known beside each field, or a small form, and a question in the foot.</summary>
public static class AssessPicture
{
    private const string SignQuestion = "How do you write a knee that is 5 degrees short of straight?  1: as 5   2: as -5   It is asked once for this case and shown with each value.";

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(AssessState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = FormScreen.Inside(size);
        (Picture body, IEnumerable<PictureRow> foot) = state switch
        {
            { Mode: AssessMode.Help } => (FormScreen.Help(HelpLines(state), state.Scroll, size.Width), []),
            { Aside: { } aside } => (FormPicture.Draw(aside, room, _ => FormBeside.Nothing), FormScreen.Foot(aside.Problem, [AsideWords(state)], size.Width)),
            _ => Form(state, room, size.Width),
        };
        return FormScreen.Draw(AssessScreen.Where(state), body, foot, (state.Status, AssessActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(AssessState state) =>
    [
        .. AssessActions.Table.HelpPage(state.HelpFor.ToString()),
        "Marks beside a value",
        "  + - ~                   improved, worse, no detectable change (never \"unchanged\")",
        "  ! ?                     possible worsening; not classed",
        "  *                       other device, position or rater than last time",
        "  = 54                    computed from other lines, not entered",
        "Several trials are typed with spaces between: 60 62 64. Their mean counts, each is kept.",
        "It suggests; a clinician decides.",
    ];

    private static (Picture, IEnumerable<PictureRow>) Form(AssessState state, PictureSize room, int width)
    {
        AssessLive live = new(state);
        Picture head = new([PictureRow.Of(new string(' ', FormPicture.LeftOf(width)) + " last           change", Ink.Quiet)]);
        Picture form = FormPicture.Draw(state.Form, room with { Height = room.Height - 1 }, line => live.Beside(line, width - FormPicture.LeftOf(width)));
        CaretAt? caret = form.Caret is { } at ? at with { Row = at.Row + 1 } : null;
        IEnumerable<PictureRow> foot = Question(state) is { } question
            ? FormScreen.Wrapped(question, width, Ink.Strong)
            : FormScreen.Foot(state.Form.Problem, live.Foot(state.Form.Current), width);
        return (new Picture([.. head.Rows, .. form.Rows], caret), foot);
    }

    internal static string? Question(AssessState state) => state.Mode switch
    {
        AssessMode.Sign => state.TypedOn.Length == 0 ? SignQuestion : $"{SignQuestion} Typed on, for the next line: {state.TypedOn}",
        AssessMode.Visit => AssessVisits.Question(state),
        AssessMode.Query => $"{state.Form.Line(state.Query!.Field)?.Title}: {state.Query.Odd} Expected: {state.Query.Expected}. Found: {state.Query.Found}.  y it is right, Enter back.",
        _ => null,
    };

    internal static string AsideWords(AssessState state) => state.Mode == AssessMode.Reason
        ? "Both are needed: initials or a role, and a few words. The old value, the day, who and why stay with the corrected value."
        : "Each may be empty: not stated. Change between two visits is only sure with the same device, position and rater.";
}
