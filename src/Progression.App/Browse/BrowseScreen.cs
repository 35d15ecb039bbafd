using Progression.App.Actions;
using Progression.App.Pictures;

namespace Progression.App.Browse;

/// <summary>The library as a screen.</summary>
public static class BrowseScreen
{
    /// <summary>The definition.</summary>
    public static ScreenDefinition<BrowseState> Definition { get; } = new()
    {
        Actions = BrowseActions.Table,
        Draw = BrowsePicture.Draw,
        Where = Where,
        Told = state => state.Status,
        Say = (state, text) => state with { Status = text },
        Type = (state, text) => state.Mode == BrowseMode.Find ? state with { Find = state.Find.Put(text), Scroll = 0, Status = "" } : null,
        Aloud = BrowseAloud.Words,
    };

    internal static ScreenPlace Where(BrowseState state) => new("Library")
    {
        Whose = $"version {state.Version}",
        What = state.Find.Text.Length > 0 ? $"with \"{state.Find.Text}\"" : state.Chosen is { } card ? card.Kind : "",
        Kept = state.Shown.Length == state.All.Length ? $"{state.All.Length} entries" : $"{state.Shown.Length} of {state.All.Length} entries",
    };
}
