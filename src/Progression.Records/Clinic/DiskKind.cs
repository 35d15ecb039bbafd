using System.Runtime.InteropServices;

namespace Progression.Records.Clinic;

/// <summary>Which kind of file system a folder is on, by the number that statfs(2) gives.</summary>
public static partial class DiskKind
{
    /// <summary>The name of a file system on which locks or flushed writes do not mean what records need; null for any other.</summary>
    /// <remarks>Numbers from the manual page statfs(2) and linux/magic.h.</remarks>
    public static string? Unsafe(long number) => number switch
    {
        0x6969 => "NFS",
        0x517B => "SMB",
        0xFF534D42 => "CIFS",
        0xFE534D42 => "SMB2",
        0x01021997 => "9P",
        0x65735546 => "FUSE",
        0x5346414F or 0x6B414653 => "AFS",
        0x00C36400 => "Ceph",
        0x73757245 => "Coda",
        0x564C => "NCP",
        0x0BD00BD0 => "Lustre",
        0x47504653 => "GPFS",
        0x01161970 => "GFS2",
        0x7461636F => "OCFS2",
        0x786F4256 => "a shared folder of a virtual machine",
        _ => null,
    };

    /// <summary>The same for the disk that a folder is on; null also where the system does not tell.</summary>
    public static string? UnsafeAt(string folder)
    {
        byte[] found = new byte[256];
        // The number is the first field, as wide as a pointer; the upper half of a sign-extended one says nothing.
        return Look(folder, found) == 0 ? Unsafe(BitConverter.ToUInt32(found, 0)) : null;
    }

    [LibraryImport("libc", EntryPoint = "statfs", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Look(string path, [Out] byte[] found);
}
