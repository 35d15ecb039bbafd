using System.Globalization;
using Microsoft.Win32.SafeHandles;

namespace Progression.Records.Storage;

/// <summary>Looks up in the system's own table who holds a lock.</summary>
internal static class LockTable
{
    /// <summary>The holder of a lock on this open file; null when the system does not tell, as between two containers.</summary>
    public static LockHolder? HolderOf(SafeFileHandle file)
    {
        try
        {
            string? inode = FieldOf($"/proc/self/fdinfo/{file.DangerousGetHandle()}", "ino:");
            return inode is null ? null : File.ReadLines("/proc/locks").Select(line => Parse(line, inode)).FirstOrDefault(found => found is not null);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    // "7: FLOCK  ADVISORY  WRITE 4711 fe:01:1234 0 EOF"; a waiting lock has "->" behind its number.
    private static LockHolder? Parse(string line, string inode)
    {
        string[] words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is [_, "FLOCK", _, _, string process, string place, ..]
            && place.EndsWith(":" + inode, StringComparison.Ordinal)
            && int.TryParse(process, NumberStyles.None, CultureInfo.InvariantCulture, out int id) && id > 0
            ? new LockHolder(id, NameOf(id), UserOf(id))
            : null;
    }

    private static string? NameOf(int process) => FieldOf($"/proc/{process}/status", "Name:");

    private static int? UserOf(int process) =>
        int.TryParse(FieldOf($"/proc/{process}/status", "Uid:")?.Split('\t')[0], out int user) ? user : null;

    private static string? FieldOf(string file, string label)
    {
        try
        {
            return File.ReadLines(file).FirstOrDefault(line => line.StartsWith(label, StringComparison.Ordinal))?[label.Length..].Trim();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
