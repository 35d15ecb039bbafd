using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Progression.Records.Clinic;

/// <summary>The system's own database of accounts and groups (getpwuid_r, getgrnam_r and their like), which the framework does not offer.</summary>
internal static partial class NativeAccount
{
    private const int RoomTooSmall = 34;
    private const int EntryBytes = 64;
    private const int LeastRoom = 4096;
    private const int MostRoom = 1 << 20;

    // struct passwd and struct group of the C library on 64-bit Linux: the name is a pointer at the start of both.
    private const int GroupOfPasswd = 20;
    private const int NumberOfGroup = 16;

    private delegate int Ask(nint entry, nint room, nuint size, out nint found);

    /// <summary>Name and first group of an account; null when the system does not know the number.</summary>
    public static (string Name, uint Group)? User(uint id) => Entry<(string, uint)>(
        (nint entry, nint room, nuint size, out nint found) => UserOf(id, entry, room, size, out found),
        found => (NameAt(found), (uint)Marshal.ReadInt32(found, GroupOfPasswd)));

    /// <summary>The name of an account, or its number where the system knows none.</summary>
    public static string NameOf(uint user) => User(user)?.Name ?? $"{user}";

    /// <summary>The number of a group; null when there is none of that name.</summary>
    public static uint? Group(string name) => Entry<uint>(
        (nint entry, nint room, nuint size, out nint found) => GroupOf(name, entry, room, size, out found), found => (uint)Marshal.ReadInt32(found, NumberOfGroup));

    /// <summary>The name of a group, or its number where the system knows none.</summary>
    public static string GroupName(uint group) => Entry<(string Name, uint)>(
        (nint entry, nint room, nuint size, out nint found) => GroupOfNumber(group, entry, room, size, out found), found => (NameAt(found), group))?.Name ?? $"{group}";

    /// <summary>All groups of an account by the database, whoever this process is; empty for an unknown one.</summary>
    public static ImmutableArray<uint> GroupsOf(uint user)
    {
        if (User(user) is not { } account)
        {
            return [];
        }

        uint[] groups = new uint[64];
        int count = groups.Length;
        while (GroupsOf(account.Name, account.Group, groups, ref count) < 0)
        {
            groups = new uint[Math.Max(count, groups.Length * 2)];
            count = groups.Length;
        }

        return [.. groups.Take(count)];
    }

    /// <summary>The groups this process has, its effective one included.</summary>
    public static ImmutableArray<uint> OwnGroups()
    {
        uint[] groups = new uint[Math.Max(1, OwnGroups(0, []))];
        int count = OwnGroups(groups.Length, groups);
        return [.. groups.Take(count).Append(EffectiveGroup()).Distinct()];
    }

    [LibraryImport("libc", EntryPoint = "getuid")]
    public static partial uint RealUser();

    [LibraryImport("libc", EntryPoint = "geteuid")]
    public static partial uint EffectiveUser();

    private static T? Entry<T>(Ask ask, Func<nint, T> read)
        where T : struct
    {
        for (int room = LeastRoom; room <= MostRoom; room *= 4)
        {
            nint memory = Marshal.AllocHGlobal(EntryBytes + room);
            try
            {
                int error = ask(memory, memory + EntryBytes, (nuint)room, out nint found);
                if (error != RoomTooSmall)
                {
                    return found == 0 ? null : read(found);
                }
            }
            finally
            {
                Marshal.FreeHGlobal(memory);
            }
        }

        return null;
    }

    private static string NameAt(nint entry) => Marshal.PtrToStringUTF8(Marshal.ReadIntPtr(entry)) ?? "";

    [LibraryImport("libc", EntryPoint = "getegid")]
    private static partial uint EffectiveGroup();

    [LibraryImport("libc", EntryPoint = "getgroups")]
    private static partial int OwnGroups(int size, [Out] uint[] groups);

    [LibraryImport("libc", EntryPoint = "getpwuid_r")]
    private static partial int UserOf(uint id, nint entry, nint room, nuint size, out nint found);

    [LibraryImport("libc", EntryPoint = "getgrnam_r", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int GroupOf(string name, nint entry, nint room, nuint size, out nint found);

    [LibraryImport("libc", EntryPoint = "getgrgid_r")]
    private static partial int GroupOfNumber(uint id, nint entry, nint room, nuint size, out nint found);

    [LibraryImport("libc", EntryPoint = "getgrouplist", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int GroupsOf(string name, uint group, [Out] uint[] groups, ref int count);
}
