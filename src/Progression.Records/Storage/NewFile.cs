using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// A file that is there whole or not at all, for its owner alone unless the group is to read it: written beside its place, flushed to the disk, then given its name, which must be free
/// unless the file of that name is to be replaced.
/// </summary>
public sealed class NewFile : IDisposable
{
    private const int Exclusive = 0x80;
    private const int OwnerOnly = 0x180; // 0600
    private const int GroupReads = 0x1A0; // 0640
    private readonly string _path;
    private readonly string _unfinished;
    private readonly SafeFileHandle _file;
    private readonly bool _replaces;
    private bool _isDone;

    private NewFile((string Path, bool Replaces) place, string unfinished, SafeFileHandle file) =>
        (_path, _replaces, _unfinished, _file, Content) = (place.Path, place.Replaces, unfinished, file, new StoreStream(file, writable: true));

    /// <summary>What is in it, to be written and read.</summary>
    public Stream Content { get; }

    /// <summary>Bytes in it once it is finished; 0 before.</summary>
    public long Length { get; private set; }

    /// <summary>Begins a file.</summary>
    /// <param name="path">Its name when it is finished.</param>
    /// <param name="replaces">Whether it takes the place of a file of that name; that one stays as it is until this one is finished.</param>
    /// <param name="groupReads">Whether the group of the folder may read it.</param>
    /// <exception cref="StoreException">There is such a file already, or it cannot be made.</exception>
    public static NewFile Begin(string path, bool replaces = false, bool groupReads = false)
    {
        string full = Path.GetFullPath(path);
        if (replaces ? Directory.Exists(full) : Path.Exists(full))
        {
            throw new StoreException(StoreFault.Refused, $"'{path}' is there already, and nothing is ever written over a file. Name another one.");
        }

        string unfinished = Path.Combine(
            Path.GetDirectoryName(full)!, FormattableString.Invariant($".{Path.GetFileName(full)}.{Environment.ProcessId}.unfinished"));
        const int flags = NativeFile.ReadWrite | NativeFile.CloseOnExec | NativeFile.Create | Exclusive;
        SafeFileHandle file = NativeFile.Open(unfinished, flags | NativeFile.NoFollow, groupReads ? GroupReads : OwnerOnly, out int error);
        return error switch
        {
            0 => new NewFile((full, replaces), unfinished, file),
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
        File.Move(_unfinished, _path, _replaces);
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
