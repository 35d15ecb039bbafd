using System.Globalization;
using System.Runtime.InteropServices;

namespace Progression.Records.Storage;

/// <summary>Who works, as the operating system knows it; never a name that was typed.</summary>
public static partial class Account
{
    /// <summary>The account of this process: its effective user number, and the name the system gives it.</summary>
    /// <exception cref="StoreException">The system has no such numbers.</exception>
    public static Actor Current() => OperatingSystem.IsLinux()
        ? new Actor(EffectiveUser().ToString(CultureInfo.InvariantCulture), Environment.UserName)
        : throw new StoreException(StoreFault.Refused, "The store needs Linux: its accounts are those of that system.");

    [LibraryImport("libc", EntryPoint = "geteuid")]
    private static partial uint EffectiveUser();
}
