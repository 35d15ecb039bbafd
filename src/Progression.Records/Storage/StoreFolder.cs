using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>The folder of a store: which files it has, and the one way to open them.</summary>
internal sealed class StoreFolder(string path)
{
    private const UnixFileMode FileMode =
        UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite;

    private const UnixFileMode ForItsOwner = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    public string Journal => Path.Combine(path, "plans.journal");

    public string Torn => Path.Combine(path, "plans.journal.torn");

    public string Staged => Path.Combine(path, "plans.journal.new");

    public string Damaged => Path.Combine(path, "plans.journal.damaged");

    public string Index => Path.Combine(path, "plans.db");

    public string Mark => Path.Combine(path, "plans.mark");

    public string Gate => Path.Combine(path, "plans.gate");

    public string Lock => Path.Combine(path, "plans.lock");

    /// <summary>Makes the folder when it is missing.</summary>
    /// <exception cref="StoreException">It cannot be made, or something else has its name.</exception>
    public void Prepare()
    {
        if (!OperatingSystem.IsLinux())
        {
            throw new StoreException(StoreFault.Refused, "The store needs Linux: its locks are those of that system.");
        }

        try
        {
            if (!Directory.Exists(path))
            {
                Directory.CreateDirectory(path, ForItsOwner);
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new StoreException(StoreFault.Refused, $"The store's folder '{path}' cannot be made: {error.Message}", error);
        }
    }

    /// <summary>Opens a file for reading and writing, making it when it is missing.</summary>
    /// <exception cref="StoreException">It is a symbolic link, or the system refuses.</exception>
    public SafeFileHandle Open(string file)
    {
        const int flags = NativeFile.ReadWrite | NativeFile.CloseOnExec;
        SafeFileHandle handle = NativeFile.Open(file, flags | NativeFile.NoFollow, 0, out int error);
        if (error != NativeFile.NoSuchFile)
        {
            return error == 0 ? handle : throw Failure(error, $"open '{file}'");
        }

        handle = NativeFile.Open(file, flags | NativeFile.NoFollow | NativeFile.Create, (int)FileMode, out error);
        if (error == 0)
        {
            AllowTheGroup(handle);
            error = NativeFile.GiveToOwnerOf(path, handle) is not 0 and int refused ? refused : NativeFile.SyncFolder(path); // A new name is only on disk once its folder is.
        }

        return error == 0 ? handle : throw Failure(error, $"make '{file}'");
    }

    // A strict umask takes the group's rights away. Another account may have made the file a moment earlier; then it has done this.
    private static void AllowTheGroup(SafeFileHandle handle)
    {
        try
        {
            if (OperatingSystem.IsLinux())
            {
                File.SetUnixFileMode(handle, FileMode);
            }
        }
        catch (UnauthorizedAccessException)
        {
        }
    }

    /// <summary>Makes the names in the folder durable.</summary>
    public void Sync()
    {
        if (NativeFile.SyncFolder(path) is not 0 and int error)
        {
            throw Failure(error, $"write '{path}' to the disk");
        }
    }

    /// <summary>A new folder inside for files that are no longer the store's but must not be lost.</summary>
    public string MakeAside(DateTimeOffset at)
    {
        string wanted = Path.Combine(path, string.Create(CultureInfo.InvariantCulture, $"set-aside-{at.UtcDateTime:yyyyMMdd'T'HHmmss'Z'}"));
        string name = wanted;
        for (int number = 2; Directory.Exists(name) || File.Exists(name); number++)
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{wanted}-{number}");
        }

        Directory.CreateDirectory(name);
        using SafeFileHandle made = NativeFile.Open(name, NativeFile.ReadOnly | NativeFile.CloseOnExec, 0, out _);
        return NativeFile.GiveToOwnerOf(path, made) is not 0 and int error ? throw Failure(error, $"give '{name}' to the owner of the store") : name;
    }

    /// <summary>Bytes that this account may still write on the disk of the folder.</summary>
    public long FreeBytes() => new DriveInfo(Path.GetFullPath(path)).AvailableFreeSpace;

    /// <summary>An error number of the system, as the fault it means for the store.</summary>
    public static StoreException Failure(int error, string attempt) => error switch
    {
        NativeFile.NoSpace or NativeFile.QuotaExceeded or NativeFile.FileTooLarge =>
            new(StoreFault.NoSpace, $"No room on the disk to {attempt}."),
        NativeFile.TooManyLinks =>
            new(StoreFault.Refused, $"Refused to {attempt}: it is a symbolic link, and a store's files are never links."),
        NativeFile.AccessDenied or NativeFile.NotPermitted or NativeFile.ReadOnlyFileSystem =>
            new(StoreFault.Refused, $"Not permitted to {attempt}: this account needs the right to write in the store's folder."),
        _ => new(StoreFault.Refused, $"Could not {attempt}: {Marshal.GetPInvokeErrorMessage(error)}."),
    };

    /// <summary>The same for an exception of the framework, which carries the number.</summary>
    public static StoreException Failure(Exception error, string attempt) =>
        error is IOException && error.HResult is > 0 and < 200
            ? Failure(error.HResult, attempt)
            : new StoreException(StoreFault.Refused, $"Could not {attempt}: {error.Message}", error);
}
