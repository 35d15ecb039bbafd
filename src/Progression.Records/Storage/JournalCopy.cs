using System.Collections.Immutable;
using System.Security.Cryptography;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>The journal up to a length, readable without the lock.</summary>
internal sealed class JournalCopy(SafeFileHandle file, long length) : IDisposable
{
    private const int ReportEvery = 100;

    /// <summary>Reads a copy that is to be whole: from the first entry on, every line good, the last save complete.</summary>
    public static JournalReading Check(Stream copy, string task, IProgress<WorkDone>? progress) => Read(copy, copy.Length, (task, progress), _ => true);

    /// <summary>Writes the bytes as they are and gives their hash.</summary>
    public string WriteTo(Stream target, IProgress<WorkDone>? progress)
    {
        using IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        byte[] buffer = new byte[1024 * 1024];
        for (long at = 0; at < length;)
        {
            int read = RandomAccess.Read(file, buffer.AsSpan(0, (int)Math.Min(buffer.Length, length - at)), at);
            if (read == 0)
            {
                throw new EndOfStreamException("The journal ended while it was copied.");
            }

            target.Write(buffer, 0, read);
            hash.AppendData(buffer, 0, read);
            at += read;
            progress?.Report(new("copying the journal", at, length));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    /// <summary>Bytes of it.</summary>
    public long Length => length;

    /// <summary>Everything that is to be said of it.</summary>
    public JournalFindings Findings(string task, IProgress<WorkDone>? progress, Action<JournalSlice> accept) => Audit(
        new StoreStream(file, writable: false),
        length,
        (task, progress),
        slice =>
        {
            accept(slice);
            return true;
        });

    /// <summary>Goes through the lines until one is not taken.</summary>
    /// <param name="task">What is being done, for those who hear of it.</param>
    /// <param name="take">Given every good line; false stops.</param>
    /// <param name="progress">Hears how far it is; null for nobody.</param>
    public JournalReading Read(string task, Func<JournalLine, bool> take, IProgress<WorkDone>? progress) =>
        Read(new StoreStream(file, writable: false), length, (task, progress), take);

    private static JournalReading Read(Stream from, long length, (string Task, IProgress<WorkDone>? Progress) told, Func<JournalLine, bool> take)
    {
        JournalFindings findings = Audit(from, length, told, slice => take(slice.Line!));
        return new(findings.Entries, findings.Last?.Line!.Entry.Sequence ?? 0, findings.Last?.Line!.Hash, findings.Damage)
        {
            Gaps = findings.Gaps.Select(gap => gap.Text).ToImmutableArray(),
        };
    }

    private static JournalFindings Audit(Stream from, long length, (string Task, IProgress<WorkDone>? Progress) told, Func<JournalSlice, bool> take)
    {
        int read = 0;
        return JournalAudit.RunWhile(JournalSlice.Of(from).TakeWhile(slice => slice.Place.End <= length), length, slice =>
        {
            if (++read % ReportEvery == 0)
            {
                told.Progress?.Report(new(told.Task, slice.Place.End, length));
            }

            return take(slice);
        });
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => file.Dispose();
}
