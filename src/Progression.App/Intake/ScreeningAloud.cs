using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Pictures;
using Progression.Core.Library;

namespace Progression.App.Intake;

/// <summary>The screening in words: a question a line with its answer.</summary>
internal static class ScreeningAloud
{
    public static ScreenAloud<ScreeningState> Words { get; } = new() { Opening = Opening, Here = Here, Read = Read, Asks = Asks, Go = Go };

    private static IEnumerable<string> Opening(ScreeningState state) => ["Yes, no or unknown answers a question. rest answers all that are left. read reasons tells what bars stim."];

    private static IEnumerable<string>? Here(ScreeningState state) => state switch
    {
        { Mode: ScreeningMode.Questions, Chosen: { } item } => [ScreeningPicture.Consequence(state), $"{state.Index + 1} of {state.Items.Length}. {Line(state, item)}"],
        { Mode: ScreeningMode.Rest } => [ScreeningPicture.RestQuestion(state)],
        { Aside: not null } => [],
        { Mode: ScreeningMode.Questions } => ["The library has no questions."],
        _ => null,
    };

    private static IEnumerable<string>? Read(ScreeningState state, string part) => (state.Mode, part) switch
    {
        (ScreeningMode.Questions, "") => [ScreeningPicture.Consequence(state), .. state.Items.Select(item => Line(state, item))],
        (ScreeningMode.Questions, "reasons") => RowWords.Of(ScreeningPicture.Below(state, RowWords.Unbroken)),
        _ => null,
    };

    private static ScreenQuestion? Asks(ScreeningState state) => state.Aside is { } aside ? FormAloud.Asks(aside, ScreeningFlow.Allowed(state)) : null;

    private static ScreeningState? Go(ScreeningState state, string words) =>
        state.Mode == ScreeningMode.Questions && SpokenNames.Fitting(words, state.Items.Select(item => item.Question)) is { Count: > 0 } found ? state.To(found[0]) : null;

    private static string Line(ScreeningState state, ScreeningItem item)
    {
        string kind = item.Kind switch
        {
            ScreeningKind.Contraindication => "Contraindication",
            ScreeningKind.Precaution => "Precaution",
            _ => "For the record",
        };
        string answer = !state.Answers.TryGetValue(item.Id, out var given) ? "No answer yet." : given.Clearance is { } clearance ? $"Yes, cleared by {clearance.By}." : $"{YesNo.Word(given.Answer)}.";
        return $"{kind}: {item.Question} {char.ToUpperInvariant(answer[0])}{answer[1..]}";
    }
}
