using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>
/// The few Linux calls that the framework does not offer as needed here: it cannot open without following a symbolic link,
/// cannot lock without its own opinion on sharing, and cannot make a folder durable.
/// </summary>
internal static partial class NativeFile
{
    public const int ReadOnly = 0;
    public const int ReadWrite = 2;
    public const int Create = 0x40;
    public const int CloseOnExec = 0x80000;

    private const int WorkingFolder = -100;
    private const uint OwnerAndGroup = 0x18;

    public const int LockShared = 1;
    public const int LockExclusive = 2;
    public const int LockWithoutWaiting = 4;

    public const int NotPermitted = 1;
    public const int NoSuchFile = 2;
    public const int Interrupted = 4;
    public const int WouldBlock = 11;
    public const int AccessDenied = 13;
    public const int FileTooLarge = 27;
    public const int NoSpace = 28;
    public const int ReadOnlyFileSystem = 30;
    public const int TooManyLinks = 40;
    public const int QuotaExceeded = 122;

    /// <summary>Refuse a symbolic link as the last part of a path; the number differs between processor families.</summary>
    public static int NoFollow => RuntimeInformation.ProcessArchitecture
        is Architecture.Arm or Architecture.Arm64 or Architecture.Ppc64le ? 0x8000 : 0x20000;

    /// <summary>An open file, or an invalid handle and the error number.</summary>
    public static SafeFileHandle Open(string path, int flags, int mode, out int error)
    {
        int descriptor;
        do
        {
            descriptor = OpenFile(path, flags, mode);
            error = descriptor < 0 ? Marshal.GetLastPInvokeError() : 0;
        }
        while (error == Interrupted);

        return new SafeFileHandle(descriptor, ownsHandle: true);
    }

    /// <summary>Takes a lock on the whole file; 0, or the error number.</summary>
    public static int Lock(SafeFileHandle file, int operation) =>
        LockFile(file, operation) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>Makes the names in a folder durable; 0, or the error number.</summary>
    public static int SyncFolder(string path)
    {
        using SafeFileHandle folder = Open(path, ReadOnly | CloseOnExec, 0, out int error);
        return error != 0 ? error : Sync(folder) == 0 ? 0 : Marshal.GetLastPInvokeError();
    }

    /// <summary>Gives a file a second name that must not be taken; 0, or the error number.</summary>
    public static int Link(string file, string name) => LinkFile(file, name) == 0 ? 0 : Marshal.GetLastPInvokeError();

    /// <summary>
    /// Gives a new file to whom its folder belongs, when the superuser made it: who works there must be able to use it. Nothing happens for anybody else.
    /// </summary>
    public static int GiveToOwnerOf(string folder, SafeFileHandle file)
    {
        // struct statx is the same on every processor, which struct stat is not: the numbers of owner and group are at 20 and 24.
        byte[] found = new byte[256];
        return EffectiveUser() != 0 ? 0
            : Look(WorkingFolder, folder, 0, OwnerAndGroup, found) != 0
                || ChangeOwner(file, BitConverter.ToUInt32(found, 20), BitConverter.ToUInt32(found, 24)) != 0 ? Marshal.GetLastPInvokeError() : 0;
    }

    [LibraryImport("libc", EntryPoint = "geteuid")]
    private static partial uint EffectiveUser();

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Look(int folder, string path, int flags, uint fields, [Out] byte[] found);

    [LibraryImport("libc", EntryPoint = "fchown", SetLastError = true)]
    private static partial int ChangeOwner(SafeFileHandle file, uint owner, uint group);

    [LibraryImport("libc", EntryPoint = "link", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int LinkFile(string file, string name);

    [LibraryImport("libc", EntryPoint = "open", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int OpenFile(string path, int flags, int mode);

    [LibraryImport("libc", EntryPoint = "flock", SetLastError = true)]
    private static partial int LockFile(SafeFileHandle file, int operation);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(SafeFileHandle file);
}
