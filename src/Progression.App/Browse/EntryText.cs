using Progression.App.Pictures;
using Progression.Records.Library;

namespace Progression.App.Browse;

/// <summary>An entry of the library in words.</summary>
internal static class EntryText
{
    /// <summary>Its title, with the value where the value is what it is for.</summary>
    public static string Title(LibraryCard card) => card["value"] is { } value ? $"{card.Title}: {value}" : card.Title;

    /// <summary>How well it is founded; what the file calls common practice has no source.</summary>
    public static string Standing(LibraryCard card) => card.Standing;

    /// <summary>Every field, a fact a line, the source and its standing last.</summary>
    public static IReadOnlyList<PictureRow> Lines(LibraryCard card, int width) =>
    [
        .. TextLines.Wrapped(Title(card), width, Ink.Strong),
        .. TextLines.Labelled(Capital(card.Kind), card.Id, width),
        .. card.Fields.Where(field => field.Key is not ("title" or "question" or "value")).SelectMany(field => TextLines.Labelled(Label(field.Key), field.Text, width)),
    ];

    private static string Label(string key) => Capital(key.Replace('_', ' ').Replace(".", ", ", StringComparison.Ordinal));

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
