using System.Globalization;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// Says which state of the journal the index was made from. Written to its own file after the index is on disk, and kept in
/// the index too: only when journal, mark file and index agree is the index used. A crash at any point leaves them different.
/// </summary>
/// <param name="Last">Number of the last entry; 0 for none.</param>
/// <param name="Saves">Number of the last entry that is not audit; 0 for none.</param>
/// <param name="Length">Bytes of the journal.</param>
/// <param name="LastOffset">Where its last line begins.</param>
/// <param name="LastLength">How long that line is; 0 for an empty journal.</param>
/// <param name="TailHash">Hash of that line; null for an empty journal.</param>
/// <param name="FieldsVersion">Which <see cref="StoreOptions.FieldsVersion"/> chose the fields.</param>
internal sealed record IndexMark(long Last, long Saves, long Length, long LastOffset, int LastLength, string? TailHash, int FieldsVersion)
{
    private const string Format = "M2";

    /// <summary>As kept in the file: one line.</summary>
    public string Text => string.Create(
        CultureInfo.InvariantCulture, $"{Format} {Last} {Saves} {Length} {LastOffset} {LastLength} {TailHash ?? "none"} {FieldsVersion}\n");

    /// <summary>The mark for a journal of this length whose last good line this is.</summary>
    public static IndexMark After(JournalSlice? last, long saves, long length, int fieldsVersion) => last is { Line: { } line }
        ? new(line.Entry.Sequence, saves, length, last.Place.Offset, last.Place.Length, line.Hash, fieldsVersion)
        : new(0, 0, length, 0, 0, null, fieldsVersion);

    /// <summary>What an open mark file says; null for anything else than a mark.</summary>
    public static IndexMark? Read(SafeFileHandle file)
    {
        byte[] bytes = new byte[512];
        return Parse(Encoding.ASCII.GetString(bytes, 0, RandomAccess.Read(file, bytes, 0)));
    }

    /// <summary>Reads the line; null for anything else.</summary>
    public static IndexMark? Parse(string text)
    {
        CultureInfo plain = CultureInfo.InvariantCulture;
        return text.EndsWith('\n')
            && text.TrimEnd('\n').Split(' ') is [Format, string entry, string save, string length, string last, string lastLength, string hash, string fields]
            && long.TryParse(entry, NumberStyles.None, plain, out long number)
            && long.TryParse(save, NumberStyles.None, plain, out long saves)
            && long.TryParse(length, NumberStyles.None, plain, out long bytes)
            && long.TryParse(last, NumberStyles.None, plain, out long offset)
            && int.TryParse(lastLength, NumberStyles.None, plain, out int size)
            && int.TryParse(fields, NumberStyles.None, plain, out int version)
            ? new IndexMark(number, saves, bytes, offset, size, hash == "none" ? null : hash, version)
            : null;
    }
}
