using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Progression.Records.Tests.Storage;

namespace Progression.Faults.Tests;

/// <summary>What a process told the kernel to write, in order, as strace saw it.</summary>
internal static partial class RecordedCalls
{
    /// <summary>Runs the driver under strace; null where that is not there or not allowed.</summary>
    public static async Task<IReadOnlyList<DiskCall>?> Of(string folder, params string[] arguments)
    {
        using TempFolder logs = new();
        string log = logs.File("calls");
        try
        {
            using Process traced = StoreDriver.StartBy(
                ["strace", "-f", "-y", "-xx", "-s", "9000000", "-e", "trace=write,pwrite64,ftruncate,fsync,fdatasync", "-e", "signal=none", "-o", log], arguments);
            await StoreDriver.Lines(traced, TestContext.Current.CancellationToken);
            return traced.ExitCode == 0 ? [.. File.ReadLines(log).Select(line => Parse(line, folder)).OfType<DiskCall>()] : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    private static DiskCall? Parse(string line, string folder)
    {
        Match call = Call().Match(line);
        if (!call.Success)
        {
            return null;
        }

        string path = Unescaped(call.Groups["path"].Value);
        string rest = call.Groups["rest"].Value;
        return call.Groups["name"].Value switch
        {
            "write" when Encoding.UTF8.GetString(Data(rest)).Trim() is ['s', 'a', 'v', 'e', 'd', ..] said => new DiskCall.Said(said),
            "pwrite64" when IsIn(path, folder) => new DiskCall.Write(Path.GetFileName(path), long.Parse(Offset().Match(rest).Groups[1].Value, CultureInfo.InvariantCulture), Data(rest)),
            "ftruncate" when IsIn(path, folder) => new DiskCall.Length(Path.GetFileName(path), long.Parse(Number().Match(rest).Value, CultureInfo.InvariantCulture)),
            "fsync" or "fdatasync" when IsIn(path, folder) => new DiskCall.Flushed(Path.GetFileName(path)),
            _ => null,
        };
    }

    private static bool IsIn(string path, string folder) => path.StartsWith(folder.TrimEnd('/') + "/", StringComparison.Ordinal);

    private static byte[] Data(string rest)
    {
        int from = rest.IndexOf('"', StringComparison.Ordinal) + 1;
        return Convert.FromHexString(rest[from..rest.IndexOf('"', from)].Replace("\\x", "", StringComparison.Ordinal));
    }

    private static string Unescaped(string path) => path.Contains("\\x", StringComparison.Ordinal)
        ? Encoding.UTF8.GetString(Convert.FromHexString(path.Replace("\\x", "", StringComparison.Ordinal)))
        : path;

    [GeneratedRegex(@"^(?:\d+ +)?(?<name>\w+)\(\d+<(?<path>[^>]*)>(?:, )?(?<rest>.*)")]
    private static partial Regex Call();

    [GeneratedRegex(@"""\.*, \d+, (\d+)")]
    private static partial Regex Offset();

    [GeneratedRegex(@"^\d+")]
    private static partial Regex Number();
}
