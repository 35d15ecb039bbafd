using System.Collections.Immutable;
using Progression.Core.Clinic;

namespace Progression.Records.Clinic;

/// <summary>What came of asking, before anything is opened, who works on a folder of records and whether it is safe to.</summary>
public sealed record ClinicAccess
{
    private const UnixFileMode UsualOfShared = (UnixFileMode)0x7; // umask 007
    private const UnixFileMode UsualOfPersonal = (UnixFileMode)0x3F; // umask 077

    /// <summary>The folder.</summary>
    public required string Folder { get; init; }

    /// <summary>What the clinic has set; null for records of one person, or where the file is not good.</summary>
    public ClinicSettings? Clinic { get; init; }

    /// <summary>Who works; null where the system does not vouch for anybody, or something before it does not hold.</summary>
    public ClinicPerson? Person { get; init; }

    /// <summary>What has to hold, in the order in which it was looked at; after some failures nothing more can be looked at.</summary>
    public required ImmutableArray<Condition> Conditions { get; init; }

    /// <summary>Whether the records may be opened.</summary>
    public bool IsGood => Person is not null && Conditions.All(condition => condition.Holds);

    /// <summary>What does not hold.</summary>
    public IEnumerable<Condition> Problems => Conditions.Where(condition => !condition.Holds);

    /// <summary>Why the records are not opened: each thing that does not hold with its cure; more than one stand under a heading, a line each.</summary>
    public string Refusal => Problems.ToList() is [var only]
        ? $"The records in {Folder} are not opened. {only}"
        : string.Join('\n', Problems.Select(problem => problem.ToString()).Prepend($"The records in {Folder} are not opened:"));

    /// <summary>The umask to work under, whatever the person's own is: files are for the group where one shares the folder, else for the owner alone.</summary>
    public UnixFileMode Umask => Clinic?.Accounts == ClinicAccounts.Own ? UsualOfShared : UsualOfPersonal;

    /// <summary>Looks at a folder. One that is not there yet will be made for the person alone.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="process">What the system says of this process.</param>
    /// <param name="anyDisk">Whether any disk will do, as for invented records.</param>
    public static ClinicAccess Of(string folder, ProcessFacts process, bool anyDisk = false)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(process);
        string path = Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        AccessCheck check = new(path, process) { AnyDisk = anyDisk };
        if (!OperatingSystem.IsLinux())
        {
            return check.Stop("Records need Linux: accounts and locks are those of that system.", "This is another system.", "run the program on Linux");
        }

        if (process.RealUser != process.EffectiveUser)
        {
            return check.Stop("The program runs as the account that started it.",
                $"It was started by {NativeAccount.NameOf(process.RealUser)} and runs as {NativeAccount.NameOf(process.EffectiveUser)}.", "chmod u-s the program; use a sudo rule instead");
        }

        return check.Look();
    }
}
