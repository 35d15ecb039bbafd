using Progression.App.Actions;
using Progression.App.Forms;

namespace Progression.App.Trying;

/// <summary>What if, in words: what each reading tried changes.</summary>
internal static class TryAloud
{
    public static ScreenAloud<TryState> Words { get; } = new()
    {
        Opening = state => state.Mode == TryMode.Readings ? ["Type over a reading to hear what moves with it. Nothing of it is kept."] : [],
        Here = state => state.Mode == TryMode.Readings ? Moved(state) : null,
        Read = (state, part) => part.Length > 0 || state.Mode != TryMode.Readings ? null : [.. FormAloud.Read(state.Form, Was), .. Moved(state)],
        Asks = state => state.Mode == TryMode.Readings ? FormAloud.Asks(state.Form, "Empty is not measured.", Was(state.Form.Current)) : null,
        Go = (state, words) => state.Mode == TryMode.Readings && FormAloud.Go(state.Form, words) is { } there ? state.With(there) : null,
    };

    private static IEnumerable<string> Moved(TryState state) =>
        TryWords.Parts(state).SelectMany(part => part.Split("   ", StringSplitOptions.RemoveEmptyEntries)).SelectMany(part => part.Split("; ")).Select(line => line.Replace(" -> ", " becomes ", StringComparison.Ordinal));

    private static string Was(FormLine line) => line.IsTouched ? $"was {(line.Given.Length == 0 ? "not measured" : line.Given)}" : "";
}
