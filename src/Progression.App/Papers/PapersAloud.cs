using Progression.App.Actions;

namespace Progression.App.Papers;

/// <summary>The papers in words.</summary>
internal static class PapersAloud
{
    public static ScreenAloud<PapersState> Words { get; } = new()
    {
        Here = state => state.Mode switch
        {
            PapersMode.List => [$"{state.Index + 1} of {state.Papers.Length}.", .. PapersPicture.Facts(state)],
            PapersMode.Name => [],
            PapersMode.Reading => state.Text,
            _ => null,
        },
        Read = (state, part) => part.Length > 0 || state.Mode is PapersMode.Help or PapersMode.Name ? null
            : state.Mode == PapersMode.Reading ? state.Text
            : state.Papers.Select(paper => $"{paper.Name}: {paper.Explains}. As {string.Join(" or ", paper.Formats.Select(PaperFormats.Word))}."),
        Asks = state => state.Mode == PapersMode.Name ? new ScreenQuestion("Name of the file") { Now = state.Name.Text } : null,
        Go = (state, words) => state.Mode == PapersMode.List && SpokenNames.Fitting(words, state.Papers.Select(paper => paper.Name)) is { Count: > 0 } found ? state.To(found[0]) : null,
    };
}
