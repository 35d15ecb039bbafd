using System.Collections.Frozen;
using System.Text;
using System.Text.RegularExpressions;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Plain;

/// <summary>
/// What line mode may write: words, digits and signs that a voice can read. Drawn lines and marks are left out, symbols become
/// words, and nothing that is not printable gets through.
/// </summary>
public static partial class PlainLetters
{
    private static readonly FrozenDictionary<char, string> Words = new Dictionary<char, string>
    {
        ['→'] = " to ",
        ['←'] = " from ",
        ['°'] = " degrees ",
        ['±'] = " plus or minus ",
        ['≥'] = " at least ",
        ['≤'] = " at most ",
        ['≈'] = " about ",
        ['×'] = " x ",
        ['·'] = " ",
        ['…'] = "...",
        ['–'] = "-",
        ['—'] = "-",
        ['‘'] = "'",
        ['’'] = "'",
        ['“'] = "\"",
        ['”'] = "\"",
        ['µ'] = "u",
        ['μ'] = "u",
    }.ToFrozenDictionary();

    /// <summary>One line without its end.</summary>
    /// <param name="text">The text; line ends in it become spaces.</param>
    /// <param name="sevenBit">Whether the locale cannot show more than seven bits.</param>
    public static string Line(string text, bool sevenBit)
    {
        string safe = Between().Replace(SafeText.OneLine(text), "$1 to $2");
        StringBuilder plain = new(safe.Length);
        foreach (char letter in safe)
        {
            plain.Append(Words.TryGetValue(letter, out string? word) ? word : IsDrawn(letter) ? " " : letter.ToString());
        }

        string line = Degrees().Replace(Marks().Replace(RowWords.Of(plain.ToString()), ""), "degrees");
        return sevenBit ? SafeText.Ascii(line) : line;
    }

    // Arrows, lines, blocks, geometric marks, patterns of dots.
    private static bool IsDrawn(char letter) => letter is (>= '\u2190' and <= '\u21FF') or (>= '\u2500' and <= '\u25FF') or (>= '\u2800' and <= '\u28FF');

    [GeneratedRegex(@"(\d)–(\d)")]
    private static partial Regex Between();

    // The mark of a finding stands before its word.
    [GeneratedRegex(@"(?<=^|: |, )[X!?Ii] (?=(stop|severe|warning|note):|\d+ (stop|severe|warning|note))")]
    private static partial Regex Marks();

    [GeneratedRegex(@"(?<=\d |, )deg\b")]
    private static partial Regex Degrees();
}
