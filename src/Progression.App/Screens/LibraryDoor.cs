using Progression.App.Actions;
using Progression.App.Browse;
using Progression.Core.Library;

namespace Progression.App.Screens;

/// <summary>Opens the library to read in.</summary>
internal static class LibraryDoor
{
    /// <summary>The library as a screen.</summary>
    /// <param name="library">The library.</param>
    /// <param name="entry">The entry to begin with; null for the first.</param>
    public static Frame Open(ClinicalLibrary library, string? entry = null) => new Frame<BrowseState>(BrowseScreen.Definition, BrowseState.Open(library, entry));
}
