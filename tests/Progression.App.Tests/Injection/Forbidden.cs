using System.Globalization;
using System.Text;

namespace Progression.App.Tests.Injection;

/// <summary>
/// What must not reach a terminal, said a second time and by other means than the program says it: by general category (Unicode
/// Standard, chapter 4.5), the bidirectional controls of Annex 9, and characters that draw nothing though their category does not tell.
/// </summary>
internal static class Forbidden
{
    private const int MostMarks = 2;

    private static readonly HashSet<UnicodeCategory> Categories =
    [
        UnicodeCategory.Control, UnicodeCategory.Format, UnicodeCategory.Surrogate, UnicodeCategory.PrivateUse, UnicodeCategory.OtherNotAssigned, UnicodeCategory.LineSeparator, UnicodeCategory.ParagraphSeparator,
    ];

    // Bidi, zero width, joiners, fillers, variation selectors (also of Mongolian), the empty braille cell, the byte order mark.
    private static readonly (int First, int Last)[] Named =
    [
        (0x00, 0x1F), (0x7F, 0x9F), (0x00AD, 0x00AD), (0x034F, 0x034F), (0x061C, 0x061C), (0x115F, 0x1160), (0x17B4, 0x17B5), (0x180B, 0x180F), (0x200B, 0x200F), (0x2028, 0x202E), (0x2060, 0x206F),
        (0x2800, 0x2800), (0x3164, 0x3164), (0xFE00, 0xFE0F), (0xFEFF, 0xFEFF), (0xFFA0, 0xFFA0), (0xFFF9, 0xFFFB), (0xE0000, 0xE0FFF),
    ];

    /// <summary>Asserts that a text of one line holds none.</summary>
    public static void None(string line, string where)
    {
        Assert.True(Found(line) is not { } found, $"{where}: {Found(line)} in {Escaped(line)}");
    }

    /// <summary>Asserts that lines with a line feed after each hold none.</summary>
    public static void NoneInLines(string text, string where)
    {
        Assert.True(text.Length == 0 || text.EndsWith('\n'), where);
        Assert.All(text.Split('\n'), line => None(line, where));
    }

    /// <summary>The first one, by name; null for none.</summary>
    public static string? Found(string line)
    {
        int marks = 0;
        for (int at = 0; at < line.Length; at++)
        {
            if (!Rune.TryGetRuneAt(line, at, out Rune rune))
            {
                return $"half a pair U+{(int)line[at]:X4}";
            }

            at += rune.Utf16SequenceLength - 1;
            UnicodeCategory category = CharUnicodeInfo.GetUnicodeCategory(rune.Value);
            marks = category is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark ? marks + 1 : 0;
            if (Categories.Contains(category) || Named.Any(range => rune.Value >= range.First && rune.Value <= range.Last) || marks > MostMarks)
            {
                return $"U+{rune.Value:X4} ({category})";
            }
        }

        return null;
    }

    private static string Escaped(string line) => string.Concat(line.Take(300).Select(letter => letter is >= ' ' and <= '~' ? letter.ToString() : $"\\u{(int)letter:X4}"));
}
