using Progression.App.Commands;
using Progression.App.Stores;
using Progression.App.Tests.Commands;
using Progression.Core.Clinic;
using Progression.Core.Library;
using Progression.Records.Caseload;
using Progression.Records.Library;
using Progression.Records.Storage;

namespace Progression.App.Tests.Stores;

/// <summary>A folder for a person's data that is there for one test, with stores in it that are really on disk.</summary>
internal sealed class TempStore : IDisposable
{
    private static readonly ClinicalLibrary Library = LibraryReader.Default();

    /// <summary>The account that works unless a test says otherwise.</summary>
    public static readonly Actor Anna = new("1001", "anna");

    public string DataHome { get; } = Directory.CreateTempSubdirectory("progression-data-").FullName;

    public string Demo => Path.Combine(DataHome, "progression-demo");

    public string Own => Path.Combine(DataHome, "progression");

    public FixedClock Clock { get; } = new(new DateTimeOffset(2026, 11, 25, 9, 0, 0, TimeSpan.Zero));

    /// <summary>The world without a terminal and with this folder for data.</summary>
    public CliEnvironment Environment => CommandRun.NoTerminal with { Clock = Clock, Variable = name => name == "XDG_DATA_HOME" ? DataHome : null };

    /// <param name="folder">The store's folder.</param>
    /// <param name="by">Who works; null for Anna.</param>
    /// <param name="person">Who works, with what they are in the clinic; null for somebody on records of their own.</param>
    /// <param name="ended">Whether it is the store of a session whose process is gone by now.</param>
    /// <param name="progress">Hears how far a long work is.</param>
    public OpenStore Open(string folder, Actor? by = null, bool ended = false, IProgress<WorkDone>? progress = null, ClinicPerson? person = null)
    {
        Actor actor = person is null ? by ?? Anna : new Actor(person.UserId, person.Name);
        DraftSession session = DraftSession.Current(actor);
        CaseBook book = new(new LiteDbPlanStore(new StoreOptions(folder, CaseSummary.Of) { Progress = progress }), person ?? ClinicPerson.Alone(actor.UserId, actor.Name), Clock);
        return new OpenStore { Folder = folder, Book = book, Drafts = new DraftShelf(folder, ended ? session with { Process = 2_000_000_000 } : session, Clock), Library = Library, Clock = Clock, Progress = progress, IsDemo = folder == Demo };
    }

    public CommandRun Run(params string[] args) => CommandRun.In(Environment, args);

    public void Dispose() => Directory.Delete(DataHome, recursive: true);
}

/// <summary>A clock that stands still until it is set.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public DateTimeOffset Now { get; set; } = now;

    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => Now;
}
