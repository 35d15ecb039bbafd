using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Clinic;

/// <summary>What the system says of one name in a folder; a symbolic link is not followed.</summary>
/// <param name="Owner">Number of the account that owns it.</param>
/// <param name="Group">Number of its group.</param>
/// <param name="Mode">Kind and rights, as stat(2) has them.</param>
/// <param name="Names">How many names the file has, on all folders of the disk.</param>
internal sealed partial record PathFacts(uint Owner, uint Group, int Mode, uint Names)
{
    private const int ThisFolder = -100;
    private const int NoFollow = 0x100;
    private const int OfTheFile = 0x1000;
    private const uint UsualFields = 0x7FF;
    private const int KindBits = 0xF000;

    /// <summary>Whether it is a folder.</summary>
    public bool IsFolder => (Mode & KindBits) == 0x4000;

    /// <summary>Whether it is an ordinary file.</summary>
    public bool IsFile => (Mode & KindBits) == 0x8000;

    /// <summary>Whether it is a symbolic link.</summary>
    public bool IsLink => (Mode & KindBits) == 0xA000;

    /// <summary>The rights alone.</summary>
    public UnixFileMode Rights => (UnixFileMode)(Mode & 0xFFF);

    /// <summary>The rights as chmod takes them.</summary>
    public string RightsText => OctalOf(Rights);

    /// <summary>Rights as chmod takes them, four digits.</summary>
    public static string OctalOf(UnixFileMode rights) => Convert.ToString((int)rights, 8).PadLeft(4, '0');

    /// <summary>What is at a path; null where nothing is or the system does not tell.</summary>
    /// <param name="path">The path.</param>
    /// <param name="error">The system's error number; 0 for none.</param>
    public static PathFacts? At(string path, out int error) => At(ThisFolder, path, NoFollow, out error);

    /// <summary>What an open file is.</summary>
    public static PathFacts? Of(SafeFileHandle file) => At((int)file.DangerousGetHandle(), "", OfTheFile, out _);

    private static PathFacts? At(int folder, string path, int flags, out int error)
    {
        // struct statx is the same on every processor, which struct stat is not.
        byte[] found = new byte[256];
        error = Look(folder, path, flags, UsualFields, found) == 0 ? 0 : Marshal.GetLastPInvokeError();
        return error != 0 ? null : new PathFacts(
            BitConverter.ToUInt32(found, 20), BitConverter.ToUInt32(found, 24), BitConverter.ToUInt16(found, 28), BitConverter.ToUInt32(found, 16));
    }

    [LibraryImport("libc", EntryPoint = "statx", SetLastError = true, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Look(int folder, string path, int flags, uint fields, [Out] byte[] found);
}
