using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>The journal file: the record itself. It only grows, but for a last save that was never confirmed.</summary>
internal sealed class RevisionJournal(SafeFileHandle file) : IDisposable
{
    public long Length => RandomAccess.GetLength(file);

    public IEnumerable<JournalSlice> Slices(long from = 0) => JournalSlice.Of(new StoreStream(file, writable: false) { Position = from }, from);

    /// <summary>The line at a place; null and the reason when what is there is not a whole line.</summary>
    public JournalLine? ReadAt(JournalPlace place, out string fault)
    {
        fault = "the journal ends before it";
        if (place.Length < 1 || place.End > Length)
        {
            return null;
        }

        byte[] bytes = ReadBytes(place.Offset, place.Length);
        fault = "it has no end";
        return bytes[^1] == '\n' ? JournalLine.Read(bytes.AsSpan(0, bytes.Length - 1), out fault) : null;
    }

    /// <summary>Adds lines and makes them durable; when that fails, takes back what was written.</summary>
    /// <exception cref="StoreException">No room, or the disk refused.</exception>
    public void Append(byte[] lines)
    {
        long before = Length;
        try
        {
            RandomAccess.Write(file, lines, before);
            RandomAccess.FlushToDisk(file);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            Shorten(before);
            throw StoreFolder.Failure(error, "write to the journal");
        }
    }

    /// <summary>Moves everything from an offset on to the end of another file, then out of the journal.</summary>
    /// <returns>How many bytes were moved.</returns>
    public long MoveTail(long from, SafeFileHandle aside)
    {
        byte[] tail = ReadBytes(from, checked((int)(Length - from)));
        RandomAccess.Write(aside, tail, RandomAccess.GetLength(aside));
        RandomAccess.FlushToDisk(aside);
        RandomAccess.SetLength(file, from);
        RandomAccess.FlushToDisk(file);
        return tail.Length;
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => file.Dispose();

    /// <summary>The bytes of a line as they are, whole or not.</summary>
    public byte[] ReadBytes(JournalPlace place) => ReadBytes(place.Offset, place.Length);

    private byte[] ReadBytes(long offset, int length)
    {
        byte[] bytes = new byte[length];
        using StoreStream stream = new(file, writable: false) { Position = offset };
        stream.ReadExactly(bytes);
        return bytes;
    }

    // If even this fails, the next session finds the rest as a torn tail.
    private void Shorten(long length)
    {
        try
        {
            RandomAccess.SetLength(file, length);
            RandomAccess.FlushToDisk(file);
        }
        catch (IOException)
        {
        }
    }
}
