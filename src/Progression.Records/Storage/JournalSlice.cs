namespace Progression.Records.Storage;

/// <summary>A stretch of the journal up to a line feed, or to its end.</summary>
/// <param name="Place">Where it is, line feed included.</param>
/// <param name="IsTerminated">False for a last line without line feed.</param>
/// <param name="Line">What it says; null when it is not whole.</param>
/// <param name="Fault">Why it is not whole; empty when it is.</param>
internal sealed record JournalSlice(JournalPlace Place, bool IsTerminated, JournalLine? Line, string Fault)
{
    /// <summary>Cuts a stream, read from where it stands, into slices.</summary>
    /// <param name="source">The stream.</param>
    /// <param name="offset">Where in the journal it stands. Default: at its beginning.</param>
    public static IEnumerable<JournalSlice> Of(Stream source, long offset = 0)
    {
        byte[] buffer = new byte[64 * 1024];
        int filled = 0;
        int searched = 0;
        while (true)
        {
            int end = Array.IndexOf(buffer, (byte)'\n', searched, filled - searched);
            if (end >= 0)
            {
                yield return Cut(buffer.AsSpan(0, end), offset, isTerminated: true);
                int length = end + 1;
                Buffer.BlockCopy(buffer, length, buffer, 0, filled - length);
                (offset, filled, searched) = (offset + length, filled - length, 0);
                continue;
            }

            searched = filled;
            if (filled == buffer.Length)
            {
                Array.Resize(ref buffer, buffer.Length * 2);
            }

            int read = source.Read(buffer, filled, buffer.Length - filled);
            if (read == 0)
            {
                break;
            }

            filled += read;
        }

        if (filled > 0)
        {
            yield return Cut(buffer.AsSpan(0, filled), offset, isTerminated: false);
        }
    }

    /// <summary>The slice that an entry will be when it is written at an offset.</summary>
    public static JournalSlice Of(JournalEntry entry, long offset) =>
        new(new(offset, JournalLine.Write(entry).Length), true, new(entry, JournalLine.HashOf(entry)), "");

    private static JournalSlice Cut(ReadOnlySpan<byte> bytes, long offset, bool isTerminated)
    {
        string fault = "it has no end";
        JournalLine? line = isTerminated ? JournalLine.Read(bytes, out fault) : null;
        return new(new(offset, bytes.Length + (isTerminated ? 1 : 0)), isTerminated, line, fault);
    }
}

/// <summary>Where a line is in the journal.</summary>
/// <param name="Offset">Its first byte, from 0.</param>
/// <param name="Length">Its bytes, line feed included.</param>
internal sealed record JournalPlace(long Offset, int Length)
{
    /// <summary>The first byte after it.</summary>
    public long End => Offset + Length;
}
