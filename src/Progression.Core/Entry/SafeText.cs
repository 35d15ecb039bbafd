using System.Globalization;
using System.Text;

namespace Progression.Core.Entry;

/// <summary>
/// Text from people and files, made harmless for a terminal. A control character, an invisible or direction-changing
/// character, half a surrogate pair and a part that joins the letter before it each become one visible <see cref="Substitute"/>, so nothing typed or imported can
/// move the cursor, recolour the screen or hide from the reader.
/// </summary>
public static class SafeText
{
    /// <summary>What stands for a character that must not reach the screen: one column wide.</summary>
    public const char Substitute = '\uFFFD';

    private const int MostMarksOnOneLetter = 2;

    /// <summary>One line: line ends and tabs are substituted too, every kind of space becomes a plain one.</summary>
    /// <param name="text">The text as it came; null gives the empty string.</param>
    public static string OneLine(string? text)
    {
        if (text is null || IsPlain(text))
        {
            return text ?? "";
        }
        StringBuilder safe = new(text.Length);
        int marks = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            marks = IsMark(rune) ? marks + 1 : 0;
            if (IsHidden(rune) || marks > MostMarksOnOneLetter || (marks > 0 && safe.Length == 0))
            {
                safe.Append(Substitute);
            }
            else if (Rune.GetUnicodeCategory(rune) == UnicodeCategory.SpaceSeparator)
            {
                safe.Append(' ');
            }
            else
            {
                safe.Append(rune);
            }
        }
        return safe.ToString();
    }

    /// <summary>Several lines: split at LF, CR or CR LF, tabs become a space, and each line is made safe by itself.</summary>
    /// <param name="text">The text as it came; null or empty gives one empty line.</param>
    public static IReadOnlyList<string> Lines(string? text) =>
        [.. (text ?? "").Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Replace('\t', ' ').Split('\n').Select(OneLine)];

    /// <summary>Seven-bit text for a terminal that cannot show more: each safe character above U+007E becomes <c>?</c>, once for each column it takes.</summary>
    /// <param name="text">The text as it came; null gives the empty string.</param>
    public static string Ascii(string? text) =>
        string.Concat(OneLine(text).EnumerateRunes().Select(rune => rune.Value < 0x7F ? rune.ToString() : new string('?', ColumnsOf(rune))));

    /// <summary>Columns a safe line takes: two for wide letters and pictures, none for a mark on a letter, else one.</summary>
    /// <param name="safe">Text that went through <see cref="OneLine"/>.</param>
    public static int Width(string safe)
    {
        ArgumentNullException.ThrowIfNull(safe);
        return IsPlain(safe) ? safe.Length : safe.EnumerateRunes().Sum(ColumnsOf);
    }

    /// <summary>Columns one safe character takes: 0, 1 or 2.</summary>
    /// <param name="rune">A character that went through <see cref="OneLine"/>.</param>
    public static int ColumnsOf(Rune rune) => rune.Value < 0x300 ? 1 : IsMark(rune) ? 0 : WideLetters.Contains(rune) ? 2 : 1;

    private static bool IsPlain(string text)
    {
        foreach (char c in text)
        {
            if (c is < ' ' or > '~')
            {
                return false;
            }
        }
        return true;
    }

    private static bool IsMark(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;

    // EnumerateRunes yields U+FFFD for a lone surrogate, which is the substitute already.
    private static bool IsHidden(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator
            or UnicodeCategory.ParagraphSeparator or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned
            or UnicodeCategory.Surrogate
        || IsBlankLetter(rune.Value) || IsJoined(rune);

    // Drawn into the letter before it: how many columns the two take differs from terminal to terminal, and a row must not shift. U+1200 joins nothing, but the terminal's library counts it among those before it.
    private static bool IsJoined(Rune rune) => Rune.GetUnicodeCategory(rune) == UnicodeCategory.SpacingCombiningMark
        || rune.Value is (>= 0x1100 and <= 0x1200) or (>= 0xA960 and <= 0xA97F) or (>= 0xD7B0 and <= 0xD7FF) or (>= 0x1F3FB and <= 0x1F3FF);

    // Letters, marks and symbols that draw nothing, so their category does not give them away:
    // joiners and variation selectors, fillers of three scripts, and the empty braille cell.
    private static bool IsBlankLetter(int point) =>
        point is 0x034F or 0x115F or 0x1160 or 0x17B4 or 0x17B5 or (>= 0x180B and <= 0x180F) or 0x2800 or 0x3164
            or (>= 0xFE00 and <= 0xFE0F) or 0xFFA0 or (>= 0xE0000 and <= 0xE0FFF);
}
