using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// A file that is there whole or not at all, for its owner alone: written beside its place, flushed to the disk, then given its name, which must be free.
/// </summary>
public sealed class NewFile : IDisposable
{
    private const int Exclusive = 0x80;
    private const int OwnerOnly = 0x180; // 0600
    private readonly string _path;
    private readonly string _unfinished;
    private readonly SafeFileHandle _file;
    private bool _isDone;

    private NewFile(string path, string unfinished, SafeFileHandle file) =>
        (_path, _unfinished, _file, Content) = (path, unfinished, file, new StoreStream(file, writable: true));

    /// <summary>What is in it, to be written and read.</summary>
    public Stream Content { get; }

    /// <summary>Bytes in it once it is finished; 0 before.</summary>
    public long Length { get; private set; }

    /// <summary>Begins a file.</summary>
    /// <param name="path">Its name when it is finished.</param>
    /// <exception cref="StoreException">There is such a file already, or it cannot be made.</exception>
    public static NewFile Begin(string path)
    {
        string full = Path.GetFullPath(path);
        if (Path.Exists(full))
        {
            throw new StoreException(StoreFault.Refused, $"'{path}' is there already, and nothing is ever written over a file. Name another one.");
        }

        string unfinished = Path.Combine(
            Path.GetDirectoryName(full)!, FormattableString.Invariant($".{Path.GetFileName(full)}.{Environment.ProcessId}.unfinished"));
        const int flags = NativeFile.ReadWrite | NativeFile.CloseOnExec | NativeFile.Create | Exclusive;
        SafeFileHandle file = NativeFile.Open(unfinished, flags | NativeFile.NoFollow, OwnerOnly, out int error);
        return error switch
        {
            0 => new NewFile(full, unfinished, file),
            NativeFile.NoSuchFile => throw new StoreException(StoreFault.Refused, $"The folder '{Path.GetDirectoryName(full)}' is not there."),
            _ => throw StoreFolder.Failure(error, $"make '{path}'"),
        };
    }

    /// <summary>Makes it durable and gives it its name.</summary>
    /// <exception cref="IOException">The name was taken in the meantime, or the disk refused.</exception>
    public void Finish()
    {
        RandomAccess.FlushToDisk(_file);
        Length = RandomAccess.GetLength(_file);
        File.Move(_unfinished, _path, overwrite: false);
        _isDone = true;
        _ = NativeFile.SyncFolder(Path.GetDirectoryName(_path)!);
    }

    /// <summary>Closes it; what was not finished is taken away.</summary>
    public void Dispose()
    {
        Content.Dispose();
        _file.Dispose();
        if (!_isDone)
        {
            File.Delete(_unfinished);
        }
    }
}
