using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// A new journal written beside the present one and then put in its place. Whoever uses it holds the store's lock. There is no moment without a journal, and
/// what was there before keeps its names in a folder of its own.
/// </summary>
internal sealed class JournalSwap : IDisposable
{
    private readonly StoreFolder _folder;
    private readonly SafeFileHandle _file;
    private bool _isDone;

    public JournalSwap(StoreFolder folder)
    {
        _folder = folder;
        _file = folder.Open(folder.Staged);
        RandomAccess.SetLength(_file, 0);
    }

    public long Length => RandomAccess.GetLength(_file);

    public void Add(ReadOnlySpan<byte> bytes) => RandomAccess.Write(_file, bytes, Length);

    /// <summary>What is in it so far; all of it counts as confirmed.</summary>
    public JournalFindings Findings(IProgress<WorkDone>? progress, Action<JournalSlice>? accept = null)
    {
        (long length, int read) = (Length, 0);
        return JournalAudit.Run(JournalSlice.Of(new StoreStream(_file, writable: false)), length, slice =>
        {
            if (++read % 100 == 0)
            {
                progress?.Report(new("checking the new journal", slice.Place.End, length));
            }

            accept?.Invoke(slice);
        });
    }

    /// <summary>Puts it in place.</summary>
    /// <returns>The folder with what was there before; null when nothing was.</returns>
    public string? Commit(DateTimeOffset at)
    {
        RandomAccess.FlushToDisk(_file);
        string[] present = [.. new[] { _folder.Journal, _folder.Index, _folder.Mark }.Where(File.Exists)];
        string? aside = present.Length == 0 ? null : _folder.MakeAside(at);
        foreach (string file in present)
        {
            string kept = Path.Combine(aside!, Path.GetFileName(file));
            if (file != _folder.Journal)
            {
                File.Move(file, kept);
            }
            else if (NativeFile.Link(file, kept) is not 0 and int error)
            {
                throw StoreFolder.Failure(error, $"keep '{file}' as '{kept}'");
            }
        }

        if (aside is not null && NativeFile.SyncFolder(aside) is not 0 and int unsynced)
        {
            throw StoreFolder.Failure(unsynced, $"write '{aside}' to the disk");
        }

        File.Move(_folder.Staged, _folder.Journal, overwrite: true);
        _folder.Sync();
        _isDone = true;
        return aside;
    }

    public void Dispose()
    {
        _file.Dispose();
        if (!_isDone)
        {
            File.Delete(_folder.Staged);
        }
    }
}
