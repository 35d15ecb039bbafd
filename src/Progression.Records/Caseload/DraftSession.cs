using System.Globalization;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>A session that keeps drafts: whose, on which machine and in which process.</summary>
/// <param name="Account">The account, as the system knows it: digits.</param>
/// <param name="Name">The name shown for it.</param>
/// <param name="Host">The machine.</param>
/// <param name="Boot">The machine's present start: letters and digits; two machines or starts never share one.</param>
/// <param name="Process">The process.</param>
/// <param name="Started">When the process began, in the system's ticks since the machine's start; tells it from an earlier one of the same number.</param>
public sealed record DraftSession(string Account, string Name, string Host, string Boot, int Process, long Started)
{
    private const string BootFile = "/proc/sys/kernel/random/boot_id";
    private const int BootLetters = 12;
    private const int StartedField = 19; // Of those after the name in brackets; proc_pid_stat(5) counts it as the 22nd.

    /// <summary>Tells apart what one process keeps one after the other, as when a case is left and opened again; 0 before anything is opened.</summary>
    public long Opening { get; init; }

    /// <summary>Names the session in a file name.</summary>
    public string Id => string.Create(CultureInfo.InvariantCulture, $"{Boot}-{Process}-{Started}-{Opening}");

    /// <summary>Whether it was kept by the same process, in this opening or another.</summary>
    public bool IsSameProcess(DraftSession other) => (Boot, Process, Started) == (other?.Boot, other?.Process, other?.Started);

    /// <summary>The session of this process.</summary>
    /// <param name="by">Who works.</param>
    public static DraftSession Current(Actor by)
    {
        ArgumentNullException.ThrowIfNull(by);
        return new(by.UserId, by.Name, Environment.MachineName, BootNow(), Environment.ProcessId, StartOf(Environment.ProcessId) ?? 0);
    }

    /// <summary>Whether another process, by the <see cref="Id"/> of its session, still runs. One on another machine counts as ended: from here nobody can tell.</summary>
    public bool IsOtherAndRuns(string id)
    {
        ArgumentNullException.ThrowIfNull(id);
        return id.Split('-') is [var boot, var process, var started, _] && boot == Boot
            && int.TryParse(process, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number != Process
            && StartOf(number) is { } start && started == start.ToString(CultureInfo.InvariantCulture);
    }

    private static string BootNow() => File.Exists(BootFile) ? string.Concat(File.ReadAllText(BootFile).Where(char.IsAsciiLetterOrDigit).Take(BootLetters)) : "unknown";

    private static long? StartOf(int process)
    {
        try
        {
            string stat = File.ReadAllText(string.Create(CultureInfo.InvariantCulture, $"/proc/{process}/stat"));
            string[] fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
            return fields[0] is "Z" or "X" ? null : long.Parse(fields[StartedField], CultureInfo.InvariantCulture); // Z and X: it has ended.
        }
        catch (Exception gone) when (gone is IOException or UnauthorizedAccessException or FormatException or IndexOutOfRangeException)
        {
            return null;
        }
    }
}
