using System.Globalization;
using System.Text;
using Progression.Core.Entry;

namespace Progression.Records.Yaml;

/// <summary>The way from a file to text that is safe to parse: not too long, UTF-8, and without characters that a reader of the file cannot see.</summary>
internal static class YamlText
{
    /// <summary>The longest file read, in bytes, this many included.</summary>
    public const int MostBytes = 1_000_000;

    /// <summary>What a text may hold, for messages.</summary>
    public const string VisibleOnly = "visible characters, spaces, tabs and line ends";

    private const string Utf8Text = "UTF-8 text";

    private const int MostHiddenTold = 10;

    /// <summary>The text of a file, or null with a problem.</summary>
    public static string? OfFile(string path, FileProblems problems)
    {
        try
        {
            if (Directory.Exists(path))
            {
                return Refuse(problems, null, "This is a folder.", "a file", path);
            }

            using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            return file.CanSeek && file.Length > MostBytes ? TooLong(problems, file.Length) : OfBytes(AtMost(file, MostBytes + 1), problems);
        }
        catch (Exception failure) when (failure is FileNotFoundException or DirectoryNotFoundException)
        {
            return Refuse(problems, null, "There is no such file.", "a file that can be read", path);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return Refuse(problems, null, "The file cannot be read.", "a file that can be read", path);
        }
    }

    /// <summary>The text of UTF-8 bytes without byte order mark, or null with problems.</summary>
    public static string? OfBytes(byte[] bytes, FileProblems problems)
    {
        if (bytes.Length > MostBytes)
        {
            return TooLong(problems, bytes.Length);
        }

        int nul = Array.IndexOf(bytes, (byte)0);
        if (nul >= 0)
        {
            return Refuse(problems, LineAt(bytes, nul), "This is not a text file: it holds a zero byte.", Utf8Text, "binary data");
        }

        int start = bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]) ? 3 : 0;
        int bad = FirstBadByte(bytes.AsSpan(start)) + start;
        return bad < bytes.Length
            ? Refuse(problems, LineAt(bytes, bad), "A byte here does not belong to UTF-8 text.", Utf8Text, $"0x{bytes[bad]:X2}")
            : VisibleText(Encoding.UTF8.GetString(bytes, start, bytes.Length - start), problems);
    }

    /// <summary>The first character of a text that a reader cannot see or that turns the direction of writing; null when there is none.</summary>
    /// <param name="text">The text; spaces, tabs and line ends may stand in it.</param>
    public static Rune? FirstHidden(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (IsHidden(rune))
            {
                return rune;
            }
        }

        return null;
    }

    /// <summary>"U+202E", with the words "changes the direction of writing" where that is what it does.</summary>
    public static string NameOf(Rune rune) =>
        $"U+{rune.Value:X4}" + (rune.Value is 0x061C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069)
            ? ", which changes the direction of writing"
            : "");

    // What the screen would substitute is refused here, so that a file shows in an editor what it shows in the program. A mark is judged on a letter;
    // the substitute itself may stand in a text that was made harmless before.
    private static bool IsHidden(Rune rune) => rune.Value is not ((>= ' ' and <= '~') or '\t' or '\n' or '\r' or SafeText.Substitute)
        && SafeText.OneLine("a" + rune).Contains(SafeText.Substitute, StringComparison.Ordinal);

    private static string? VisibleText(string text, FileProblems problems)
    {
        int line = 0;
        int told = 0;
        foreach (string each in text.Split('\n'))
        {
            line++;
            if (FirstHidden(each) is Rune rune && told++ < MostHiddenTold)
            {
                Refuse(problems, line, "A control or invisible character stands in the text.", VisibleOnly, NameOf(rune));
            }
        }

        return told == 0 ? text : null;
    }

    private static byte[] AtMost(FileStream file, int most)
    {
        byte[] buffer = new byte[most];
        int read = file.ReadAtLeast(buffer, most, throwOnEndOfStream: false);
        return buffer[..read];
    }

    private static int FirstBadByte(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == System.Buffers.OperationStatus.Done)
        {
            at += length;
        }

        return at;
    }

    private static int LineAt(byte[] bytes, int at) => 1 + bytes.AsSpan(0, at).Count((byte)'\n');

    private static string? TooLong(FileProblems problems, long bytes) =>
        Refuse(problems, null, "The file is too long to be one of ours.", $"at most {MostBytes} bytes", string.Create(CultureInfo.InvariantCulture, $"{bytes} bytes"));

    private static string? Refuse(FileProblems problems, int? line, string wrong, string allowed, string found)
    {
        problems.Add(line, new Problem("", wrong, allowed, found));
        return null;
    }
}
