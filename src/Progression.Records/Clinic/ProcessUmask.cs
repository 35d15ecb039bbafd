using System.Runtime.InteropServices;

namespace Progression.Records.Clinic;

/// <summary>Which rights the files that this process makes are made without.</summary>
public static partial class ProcessUmask
{
    /// <summary>What holds until it is known whose records are opened: for the account alone.</summary>
    public const UnixFileMode Strict = (UnixFileMode)0x3F;

    /// <summary>Sets it, whatever whoever started the process had set. Does nothing where the system has no such thing.</summary>
    public static void Set(UnixFileMode without)
    {
        if (OperatingSystem.IsLinux())
        {
            _ = Change((uint)without);
        }
    }

    [LibraryImport("libc", EntryPoint = "umask")]
    private static partial uint Change(uint mask);
}
