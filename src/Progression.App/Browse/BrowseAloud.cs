using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Records.Library;

namespace Progression.App.Browse;

/// <summary>The library in words.</summary>
internal static class BrowseAloud
{
    public static ScreenAloud<BrowseState> Words { get; } = new()
    {
        Here = state => state.Mode switch
        {
            BrowseMode.Help => null,
            BrowseMode.Find => [],
            BrowseMode.Entry => RowWords.Of(BrowsePicture.PageLines(state, RowWords.Unbroken)),
            _ => [state.Chosen is { } card ? $"{state.Index + 1} of {state.Shown.Length}. {Line(card)}" : "No entry has these words."],
        },
        Read = (state, part) => part.Length > 0 || state.Mode == BrowseMode.Help ? null
            : state.Mode == BrowseMode.Entry ? RowWords.Of(BrowsePicture.PageLines(state, RowWords.Unbroken))
            : state.Shown.Select(Line),
        Asks = state => state.Mode == BrowseMode.Find ? new ScreenQuestion("Words to find") { Now = state.Find.Text } : null,
        Go = (state, words) => SpokenNames.Fitting(words, state.Shown.Select(card => $"{card.Kind} {card.Id} {card.Title}")) is { Count: > 0 } found ? state.To(found[0]) : null,
    };

    private static string Line(LibraryCard card) => $"{card.Kind}: {EntryText.Title(card)}. Standing: {EntryText.Standing(card)}.";
}
