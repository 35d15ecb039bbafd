using System.Text;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.App.Commands.Library;

/// <summary>The clinical library as lines of text.</summary>
public static class LibraryText
{
    /// <summary>Every entry by kind, with the count of the kind, and for each its id, title and standing.</summary>
    public static string List(ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        StringBuilder text = new($"Library version {library.Version}; the usual regimen is {library.DefaultRegimen}.\n");
        LibraryCard[] cards = [.. LibraryCards.Of(library)];
        int width = cards.Max(card => card.Id.Length);
        foreach (IGrouping<string, LibraryCard> kind in cards.GroupBy(card => card.Kind))
        {
            text.Append('\n').Append(Heading(kind.Key)).Append(" (").Append(kind.Count()).Append(")\n");
            foreach (LibraryCard card in kind)
            {
                string value = card.Kind == "limit" ? $": {card["value"]}" : "";
                text.Append("  ").Append(card.Id.PadRight(width)).Append("  ").Append(card.Title).Append(value).Append(" [").Append(card.Standing).Append("]\n");
            }
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>Every field of one entry, one a line; a dotted key leads into a group.</summary>
    public static string Show(LibraryCard card)
    {
        ArgumentNullException.ThrowIfNull(card);
        int width = card.Fields.Max(field => field.Key.Length);
        return string.Join('\n', [$"{Heading(card.Kind, plural: false)}: {card.Id}", .. card.Fields.Select(field => $"  {field.Key.PadRight(width)}  {field.Text}")]);
    }

    private static string Heading(string kind, bool plural = true) => char.ToUpperInvariant(kind[0]) + kind[1..] + (plural ? "s" : "");
}
