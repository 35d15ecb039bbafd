using System.Text;
using Progression.Core.Entry;

namespace Progression.App.Pictures;

/// <summary>Safe text cut, filled and broken to a number of columns.</summary>
public static class TextFit
{
    /// <summary>Stands where text was cut off.</summary>
    public const char Cut = '…';

    /// <summary>Exactly this many columns: filled with spaces, or cut with <see cref="Cut"/> as its last column.</summary>
    public static string Exactly(string safe, int width)
    {
        ArgumentNullException.ThrowIfNull(safe);
        int columns = SafeText.Width(safe);
        if (columns <= width)
        {
            return safe + new string(' ', width - columns);
        }
        if (width <= 0)
        {
            return "";
        }
        string start = Start(safe, width - 1);
        return start + Cut + new string(' ', width - 1 - SafeText.Width(start));
    }

    /// <summary>The longest of some wordings that fits, else the last one cut; order them from long to short.</summary>
    public static string Longest(IEnumerable<string> wordings, int width)
    {
        ArgumentNullException.ThrowIfNull(wordings);
        string last = "";
        foreach (string wording in wordings)
        {
            if (SafeText.Width(wording) <= width)
            {
                return Exactly(wording, width);
            }
            last = wording;
        }
        return Exactly(last, width);
    }

    /// <summary>Lines of at most this many columns, broken at spaces; a longer word is broken where the line ends.</summary>
    public static IReadOnlyList<string> Wrap(string safe, int width)
    {
        ArgumentNullException.ThrowIfNull(safe);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 2);
        List<string> lines = [];
        string line = "";
        foreach (string word in safe.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => Pieces(word, width)))
        {
            if (line.Length > 0 && SafeText.Width(line) + 1 + SafeText.Width(word) > width)
            {
                lines.Add(line);
                line = "";
            }
            line += line.Length > 0 ? " " + word : word;
        }
        lines.Add(line);
        return lines;
    }

    private static IEnumerable<string> Pieces(string word, int width)
    {
        while (SafeText.Width(word) > width)
        {
            string piece = Start(word, width);
            yield return piece;
            word = word[piece.Length..];
        }
        yield return word;
    }

    private static string Start(string safe, int width)
    {
        StringBuilder start = new();
        int left = width;
        foreach (Rune rune in safe.EnumerateRunes())
        {
            left -= SafeText.ColumnsOf(rune);
            if (left < 0)
            {
                break;
            }
            start.Append(rune);
        }
        return start.ToString();
    }
}
