using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>The journal up to a length, readable without the lock.</summary>
internal sealed class JournalCopy(SafeFileHandle file, long length) : IDisposable
{
    /// <summary>Writes the good lines whose number is higher than <paramref name="after"/>, and says how many.</summary>
    public long WriteTo(Stream target, long after)
    {
        long written = 0;
        foreach (JournalSlice slice in JournalSlice.Of(new StoreStream(file, writable: false)))
        {
            if (slice.Place.End > length)
            {
                break;
            }

            if (slice.Line is { } line && line.Entry.Sequence > after)
            {
                target.Write(JournalLine.Write(line.Entry));
                written++;
            }
        }

        return written;
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => file.Dispose();
}
