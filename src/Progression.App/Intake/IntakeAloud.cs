using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Pictures;

namespace Progression.App.Intake;

/// <summary>The form of a case in words.</summary>
internal static class IntakeAloud
{
    public static ScreenAloud<IntakeState> Words { get; } = new() { Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string>? Here(IntakeState state) => state.Mode switch
    {
        IntakeMode.Form => FormAloud.Answered(state.Form, Beside(state)),
        IntakeMode.Regimens => [$"{state.Index + 1} of {state.Desk.Library.Regimens.Count}: {IntakeFlow.Regimens(state)[state.Index].Title}.", .. RowWords.Of(RegimenPage.Details(state, RowWords.Unbroken))],
        _ => null,
    };

    private static IEnumerable<string>? Read(IntakeState state, string part) =>
        part.Length > 0 || state.Mode == IntakeMode.Help ? null
        : state.Mode == IntakeMode.Form ? FormAloud.Read(state.Form, Beside(state))
        : IntakeFlow.Regimens(state).Select(regimen => $"{regimen.Title}.");

    private static ScreenQuestion? Asks(IntakeState state)
    {
        IntakeWording words = new(state);
        return state.Mode == IntakeMode.Form ? FormAloud.Asks(state.Form, string.Join(' ', words.Foot(state.Form.Current)), words.Shown(state.Form.Current) ?? "") : null;
    }

    private static IntakeState? Go(IntakeState state, string words) =>
        state.Mode == IntakeMode.Form && FormAloud.Go(state.Form, words) is { } there ? state with { Form = there, Status = "" } : null;

    private static Func<FormLine, string> Beside(IntakeState state)
    {
        IntakeWording words = new(state);
        return line => string.Join(' ', new[] { words.Beside(line), line.Text.Length == 0 ? words.Shown(line) ?? "" : "" }.Where(text => text.Length > 0));
    }
}
