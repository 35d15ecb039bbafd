using Progression.App.Commands;
using Progression.Core.Clinic;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Plans;

/// <summary>A folder with case files and a store of its own, on a day that stands still. The people in the files are invented.</summary>
internal sealed class PlanBench : IDisposable
{
    /// <summary>A short good case: nobody was asked the screening questions, so there is no stim.</summary>
    public const string Short = """
        schema: case-file/1
        code: K-100
        born: 1957-05-14
        operation:
          date: 2026-03-02
          side: left
          procedure: Knee replacement
        weight_bearing: as tolerated
        plan:
          regimen: strong-15-twice-daily
          weeks: 6
        screening:
          date: 2026-03-06
          answers:
            infection: no
        assessments:
          - date: 2026-03-06
            readings:
              flexion_active: 62 deg
              extension_active: 18 deg
              extension_passive: 8 deg
        sessions:
          - date: 2026-03-06
            contractions: 10

        """;

    private static readonly DateTimeOffset Saturday = new(2026, 3, 7, 9, 0, 0, TimeSpan.Zero);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("plans-");
    private readonly CliEnvironment _environment;

    public PlanBench() => _environment = CommandRun.NoTerminal with { Clock = new FixedClock(Saturday), Variable = Variable };

    /// <summary>The documented example: every screening question answered, and stim on the plan.</summary>
    public static string Example { get; } = CommandRun.Of("example").Data;

    public string Store => Path.Combine(_folder.FullName, "store");

    /// <summary>The folder of the person's settings.</summary>
    public string Settings => Path.Combine(_folder.FullName, "config");

    public CaseBook Book => new(new LiteDbPlanStore(new StoreOptions(Store, CaseSummary.Of)), ClinicPerson.Alone("1002", "Kim Sample"), new FixedClock(Saturday));

    public string File(string text, string name = "case.yaml") => Bytes(System.Text.Encoding.UTF8.GetBytes(text), name);

    public string Bytes(byte[] bytes, string name = "case.yaml")
    {
        string path = Path.Combine(_folder.FullName, name);
        System.IO.File.WriteAllBytes(path, bytes);
        return path;
    }

    public string Folder(string name) => _folder.CreateSubdirectory(name).FullName;

    public CommandRun Run(params string[] args) => CommandRun.In(_environment, args);

    /// <summary>The same as another account.</summary>
    public CommandRun RunAs(ProcessFacts process, params string[] args) => CommandRun.In(_environment with { Process = process }, args);

    public CommandRun RunWith(TextReader input, params string[] args) => CommandRun.In(_environment with { Input = input }, args);

    public OpenedCase? Saved(string code) => Directory.Exists(Store) ? Book.Open(CaseCode.Parse(code)!) : null;

    public void Dispose() => _folder.Delete(recursive: true);

    private string? Variable(string name) => name switch
    {
        "PROGRESSION_STORE" => Store,
        "XDG_CONFIG_HOME" => Settings,
        _ => null,
    };

    private sealed class FixedClock(DateTimeOffset now) : TimeProvider
    {
        public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

        public override DateTimeOffset GetUtcNow() => now;
    }
}
