using Progression.App.Actions;
using Progression.App.Forms;

namespace Progression.App.Intake;

/// <summary>The form of a case in words.</summary>
internal static class IntakeAloud
{
    public static ScreenAloud<IntakeState> Words { get; } = new() { Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string>? Here(IntakeState state) =>
        state.Mode == IntakeMode.Form ? FormAloud.Answered(state.Form, Beside(state)) : null;

    private static IEnumerable<string>? Read(IntakeState state, string part) =>
        part.Length > 0 || state.Mode != IntakeMode.Form ? null : FormAloud.Read(state.Form, Beside(state));

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
