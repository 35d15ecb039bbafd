using System.Buffers;
using System.Globalization;
using System.Text;

namespace Progression.Exchange.Import;

/// <summary>
/// Text of bytes of another program: UTF-8 with or without its mark, or UTF-16 with its mark (RFC 3629, RFC 2781). No other encoding is guessed, because a
/// wrong guess changes letters in silence.
/// </summary>
public static class ImportText
{
    private const string Allowed = "UTF-8, or UTF-16 with a byte order mark";

    /// <summary>The text without its mark, or why it is none, with the place of the first byte that does not fit.</summary>
    public static (string? Text, ImportProblem? Problem) Of(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        return bytes switch
        {
            [0xFF, 0xFE, 0x00, 0x00, ..] or [0x00, 0x00, 0xFE, 0xFF, ..] => (null, Refused("This is UTF-32 text.", "UTF-32", 0, bytes)),
            [0xFF, 0xFE, ..] => Utf16(bytes, new UnicodeEncoding(bigEndian: false, byteOrderMark: false, throwOnInvalidBytes: true)),
            [0xFE, 0xFF, ..] => Utf16(bytes, new UnicodeEncoding(bigEndian: true, byteOrderMark: false, throwOnInvalidBytes: true)),
            [0xEF, 0xBB, 0xBF, ..] => Utf8(bytes, 3),
            _ => Utf8(bytes, 0),
        };
    }

    private static (string?, ImportProblem?) Utf8(byte[] bytes, int start)
    {
        int nul = Array.IndexOf(bytes, (byte)0);
        if (nul >= 0)
        {
            return (null, Refused("A zero byte stands here: this is no text file, or UTF-16 text without its mark.", "a zero byte", nul, bytes));
        }

        int at = start;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes.AsSpan(at), out _, out int length) == OperationStatus.Done)
        {
            at += length;
        }

        return at < bytes.Length
            ? (null, Refused("A byte here does not belong to UTF-8 text.", $"0x{bytes[at]:X2}", at, bytes))
            : (Encoding.UTF8.GetString(bytes, start, bytes.Length - start), null);
    }

    private static (string?, ImportProblem?) Utf16(byte[] bytes, UnicodeEncoding encoding)
    {
        try
        {
            string text = encoding.GetString(bytes, 2, bytes.Length - 2);
            int nul = text.IndexOf('\0', StringComparison.Ordinal);
            return nul < 0 ? (text, null) : (null, Refused("A zero character stands here: this is no text file.", "a zero character", 2 + (2 * nul), bytes));
        }
        catch (DecoderFallbackException fault)
        {
            return (null, Refused("Bytes here do not belong to UTF-16 text.", "half a character", 2 + Math.Max(0, fault.Index), bytes));
        }
    }

    private static ImportProblem Refused(string wrong, string found, int at, byte[] bytes)
    {
        int line = 1 + bytes.AsSpan(0, Math.Min(at, bytes.Length)).Count((byte)'\n');
        return new ImportProblem(ImportPlace.File, wrong, Allowed, string.Create(CultureInfo.InvariantCulture, $"{found} at byte {at + 1}, line {line}"));
    }
}
