using System.CommandLine;
using Progression.App.Commands.Records;
using Progression.App.Stores;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Commands;

/// <summary>Finds the store a command works on, and opens it.</summary>
/// <param name="environment">The world around the command.</param>
/// <param name="output">Where the store's notices go.</param>
internal sealed class StorePlace(CliEnvironment environment, CommandOutput output)
{
    /// <summary>The option every command with a store has.</summary>
    public Option<string> Option { get; } = new("--store")
    {
        Description = "The store's folder. Default: PROGRESSION_STORE, else progression in the folder for a person's data.",
        HelpName = "FOLDER",
    };

    /// <summary>The folder: the option, else the variable PROGRESSION_STORE, else "progression" under XDG_DATA_HOME or ~/.local/share.</summary>
    /// <param name="line">The command line; null for none.</param>
    public string Folder(ParseResult? line) =>
        line?.GetValue(Option) ?? environment.Variable("PROGRESSION_STORE") ?? Path.Combine(environment.DataHome, "progression");

    /// <summary>The folder of the demo's own store.</summary>
    public string DemoFolder => Path.Combine(environment.DataHome, "progression-demo");

    /// <summary>Who works on a folder, and what has to hold before it is opened.</summary>
    public ClinicAccess Access(string folder) => ClinicAccess.Of(folder, environment.Process ?? ProcessFacts.Current(environment.Variable), anyDisk: folder == DemoFolder || DemoMarker.Of(folder) is not null);

    /// <summary>The records of a folder with who works on them; all files made from now on have the rights that its accounts need.</summary>
    /// <exception cref="StoreException">Refused: it is not safe, or nobody vouches for who works; the message says everything that is wrong, each with its cure.</exception>
    public OpenRecords Records(string folder) => Records(folder, notice => output.Message($"progression: {notice.Text}"), Progress());

    /// <summary>Tells on standard error how far a long work is.</summary>
    public IProgress<WorkDone> Progress() => new ProgressLines(output, environment.Clock);

    /// <summary>The same with other ears for the store's notices and progress: while a screen is shown they must not be written over it.</summary>
    public OpenRecords Records(string folder, Action<StoreNotice> notify, IProgress<WorkDone> progress)
    {
        (ClinicAccess access, LiteDbPlanStore store) = Opened(folder, notify, progress);
        return new OpenRecords(access, store, environment.Clock);
    }

    /// <summary>The records of a folder as a whole.</summary>
    /// <exception cref="StoreException">As for <see cref="Records(string)"/>.</exception>
    public RecordsAtHand AtHand(string folder, IProgress<WorkDone> progress)
    {
        (ClinicAccess access, LiteDbPlanStore store) = Opened(folder, notice => output.Message($"progression: {notice.Text}"), progress);
        return new RecordsAtHand(folder, store, access.Person!, environment.Clock, progress);
    }

    private (ClinicAccess Access, LiteDbPlanStore Store) Opened(string folder, Action<StoreNotice> notify, IProgress<WorkDone> progress)
    {
        ClinicAccess access = Access(folder);
        if (!access.IsGood)
        {
            throw new StoreException(StoreFault.Refused, access.Refusal);
        }

        environment.Umask(access.Umask);
        return (access, new LiteDbPlanStore(new StoreOptions(folder, CaseSummary.Of) { Schemas = RecordSchemas.Table, Notify = notify, Progress = progress, Saved = Witness(access, notify) }));
    }

    private Action<StoreHead> Witness(ClinicAccess access, Action<StoreNotice> notify)
    {
        if (access.Clinic is not { Syslog: true })
        {
            return static _ => { };
        }

        SystemLog log = new(environment.Clock, environment.LogSocket);
        bool told = false;
        return head =>
        {
            if (log.Send(head) is { } problem && !told)
            {
                told = true;
                notify(new StoreNotice(StoreNoticeKind.HeadNotSent, problem));
            }
        };
    }

    /// <summary>The file that remembers what the columns of a person's tables are; it lies beside their settings and holds nothing of a case.</summary>
    public string Columns(OpenRecords records) => records.Settings is { } settings
        ? Path.ChangeExtension(settings, ".columns.json")
        : Path.Combine(environment.ConfigHome, "progression", "columns.json");

    /// <summary>The cases and plans of a folder.</summary>
    public CaseBook Open(string folder) => Records(folder).Book;

    /// <summary>The exit code of a refused save.</summary>
    public static int CodeOf(Refusal refusal) => refusal switch
    {
        Refusal.TryLater => ExitCode.TryLater,
        Refusal.NoSpace => ExitCode.CannotCreate,
        Refusal.Damaged => ExitCode.BadData,
        _ => ExitCode.NotPermitted,
    };

    /// <summary>The exit code of a store that could not be used.</summary>
    public static int CodeOf(StoreFault fault) => fault switch
    {
        StoreFault.Busy => ExitCode.TryLater,
        StoreFault.NoSpace => ExitCode.CannotCreate,
        StoreFault.Corrupt or StoreFault.Newer => ExitCode.BadData,
        _ => ExitCode.NotPermitted,
    };
}
