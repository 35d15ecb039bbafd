using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.App.Browse;

/// <summary>The clinical library being read.</summary>
public sealed record BrowseState
{
    private readonly LineEntry _find = LineEntry.Empty;

    private BrowseState()
    {
    }

    /// <summary>The version of the library.</summary>
    public required string Version { get; init; }

    /// <summary>Every entry, kind by kind.</summary>
    public required ImmutableArray<LibraryCard> All { get; init; }

    /// <summary>The entries that have every word that is looked for.</summary>
    public ImmutableArray<LibraryCard> Shown { get; private init; } = [];

    /// <summary>The words looked for; empty shows all.</summary>
    public LineEntry Find
    {
        get => _find;
        init => (_find, Shown, Index) = (value, [.. All.Where(card => Has(card, value.Text))], 0);
    }

    /// <summary>The entry under the cursor, from 0.</summary>
    public int Index { get; init; }

    /// <summary>What the keys mean.</summary>
    public BrowseMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public BrowseMode HelpFor { get; init; }

    /// <summary>Lines that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told.</summary>
    public string Status { get; init; } = "";

    /// <summary>The entry under the cursor; null where none fits.</summary>
    public LibraryCard? Chosen => Shown.IsEmpty ? null : Shown[Math.Clamp(Index, 0, Shown.Length - 1)];

    /// <summary>The library with the cursor on an entry.</summary>
    /// <param name="library">The library.</param>
    /// <param name="id">The id of the entry; null, or one that is not there, for the first.</param>
    public static BrowseState Open(ClinicalLibrary library, string? id = null)
    {
        ArgumentNullException.ThrowIfNull(library);
        ImmutableArray<LibraryCard> cards = LibraryCards.Of(library);
        BrowseState state = new() { Version = library.Version, All = cards, Find = LineEntry.Empty };
        return state.To(cards.ToList().FindIndex(card => card.Id == id));
    }

    /// <summary>The state with the cursor on another entry; stays at the ends.</summary>
    public BrowseState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Shown.Length - 1)), Scroll = 0, Status = "" };

    /// <summary>The state at the first entry of the kind after or before the present one.</summary>
    public BrowseState ToKind(int step)
    {
        ImmutableArray<string> kinds = [.. Shown.Select(card => card.Kind).Distinct()];
        return Chosen is not { } chosen ? this
            : To(Shown.ToList().FindIndex(card => card.Kind == kinds[Math.Clamp(kinds.IndexOf(chosen.Kind) + step, 0, kinds.Length - 1)]));
    }

    private static bool Has(LibraryCard card, string words) => words.Split(' ', StringSplitOptions.RemoveEmptyEntries)
        .All(word => $"{card.Kind} {card.Id}".Contains(word, StringComparison.OrdinalIgnoreCase) || card.Fields.Any(field => field.Text.Contains(word, StringComparison.OrdinalIgnoreCase)));
}
