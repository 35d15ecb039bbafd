using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Pictures;

namespace Progression.App.Assess;

/// <summary>The assessment in words.</summary>
internal static class AssessAloud
{
    private const int Wide = 200;

    public static ScreenAloud<AssessState> Words { get; } = new() { Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string>? Here(AssessState state) => state.Mode switch
    {
        AssessMode.Form => FormAloud.Answered(state.Form, Beside(state)),
        AssessMode.Detail or AssessMode.Reason => [AssessPicture.AsideWords(state)],
        AssessMode.Help => null,
        _ => [AssessPicture.Question(state) ?? ""],
    };

    private static IEnumerable<string>? Read(AssessState state, string part) => (part.Length, state) switch
    {
        ( > 0, _) or (_, { Mode: AssessMode.Help }) => null,
        (_, { Aside: { } aside }) => FormAloud.Read(aside, _ => ""),
        _ => FormAloud.Read(state.Form, Beside(state)),
    };

    private static ScreenQuestion? Asks(AssessState state) => state switch
    {
        { Mode: AssessMode.Detail or AssessMode.Reason, Aside: { } aside } => FormAloud.Asks(aside, ""),
        { Mode: AssessMode.Form } => Asks(state, state.Form.Current),
        _ => null,
    };

    private static ScreenQuestion Asks(AssessState state, FormLine line)
    {
        ScreenQuestion asked = FormAloud.Asks(state.Form, new AssessReading(state).Allowed(line), line.Text.Length == 0 ? Beside(state)(line) : "");
        return AssessVisits.Entry(state, line.Id) is { } entry ? asked with { Title = state.Desk.Library.Measures[line.Id].Title, Allowed = entry.Range + "." } : asked;
    }

    private static AssessState? Go(AssessState state, string words) =>
        state.Mode == AssessMode.Form && FormAloud.Go(state.Form, words) is { } there ? state with { Form = there, Status = "" } : null;

    private static Func<FormLine, string> Beside(AssessState state)
    {
        AssessLive live = new(state);
        return line =>
        {
            FormBeside beside = live.Beside(line, Wide);
            return RowWords.Of($"{beside.Shown} {beside.Right.Text}").Replace("* ", "other device, position or rater; ", StringComparison.Ordinal);
        };
    }
}
