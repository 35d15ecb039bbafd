using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>The journal up to a length, readable without the lock.</summary>
internal sealed class JournalCopy(SafeFileHandle file, long length) : IDisposable
{
    private const int ReportEvery = 100;

    /// <summary>Goes through the lines until one is not taken.</summary>
    /// <param name="task">What is being done, for those who hear of it.</param>
    /// <param name="take">Given every good line; false stops.</param>
    /// <param name="progress">Hears how far it is; null for nobody.</param>
    public JournalReading Read(string task, Func<JournalLine, bool> take, IProgress<WorkDone>? progress)
    {
        IEnumerable<JournalSlice> slices = JournalSlice.Of(new StoreStream(file, writable: false)).TakeWhile(slice => slice.Place.End <= length);
        int read = 0;
        JournalFindings findings = JournalAudit.RunWhile(slices, length, slice =>
        {
            if (++read % ReportEvery == 0)
            {
                progress?.Report(new(task, slice.Place.End, length));
            }

            return take(slice.Line!);
        });
        return new(findings.Entries, findings.Last?.Line!.Entry.Sequence ?? 0, findings.Last?.Line!.Hash, findings.Damage);
    }

    /// <summary>Closes the file.</summary>
    public void Dispose() => file.Dispose();
}
