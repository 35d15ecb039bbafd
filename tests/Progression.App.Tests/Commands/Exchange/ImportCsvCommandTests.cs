using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Core.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Plans;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Exchange;

public sealed class ImportCsvCommandTests : IDisposable
{
    private const string Visit = "Visit day;Bend;Remarks\n7.3.2026;64,5;went well\n";

    private readonly PlanBench _bench = new();

    public ImportCsvCommandTests() => _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void The_preview_changes_nothing_and_yes_imports_all_of_it()
    {
        CommandRun preview = Mapped(Visit);
        Assert.Equal((ExitCode.Good, "progression import csv: nothing was changed; --yes imports it.\n"), (preview.Code, preview.Messages));
        Assert.Equal("EXAMPLE-07: 1 would come in.\nWould come in, 2026-03-07, week 1:\n  row 2  Active flexion  64.5 deg\n", preview.Data);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);

        string plan = PlanJson.Write(_bench.Saved("EXAMPLE-07")!.Plan!);
        CommandRun done = Mapped(Visit, "--yes");
        Assert.Equal((ExitCode.Good, "Saved EXAMPLE-07, case revision 2. The plan stays as it is; \"progression reassess\" proposes changes.\n"), (done.Code, done.Messages));
        Assert.Equal(64.5, _bench.Saved("EXAMPLE-07")!.Case.Assessments[^1].Value("flexion_active"));
        Assert.Equal(plan, PlanJson.Write(_bench.Saved("EXAMPLE-07")!.Plan!));
        Assert.Equal(["csv measures: 1"], Imported());
    }

    [Fact]
    public void What_columns_are_is_said_once_for_a_header_and_not_kept_from_a_preview()
    {
        Mapped(Visit);
        Assert.Equal(ExitCode.BadData, Import(Visit).Code);
        Mapped(Visit, "--yes");
        CommandRun again = Import(Visit);
        Assert.Equal("EXAMPLE-07: nothing that the case has not already.\nIn the case already, left out, 2026-03-07, week 1, a visit that is there:\n  row 2  Active flexion  64.5 deg\n", again.Data);
        string kept = File.ReadAllText(Path.Combine(_bench.Settings, "progression", "columns.json"));
        Assert.DoesNotContain("64", kept, StringComparison.Ordinal);
        Assert.DoesNotContain("went well", kept, StringComparison.Ordinal);
        Assert.DoesNotContain("EXAMPLE", kept, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refusal_keeps_everything_out()
    {
        CommandRun run = Import("date,pain_rest\n2026-03-07,2\n2026-03-08,2\n", "--yes");
        Assert.Equal(ExitCode.BadData, run.Code);
        Assert.Contains("EXAMPLE-07: 1 refusal, so nothing comes in.", run.Data, StringComparison.Ordinal);
        Assert.Contains("  row 3, pain_rest: The day lies in the future.", run.Data, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
        Assert.Empty(Imported());
    }

    [Fact]
    public void What_looks_like_a_slip_comes_in_only_when_it_is_confirmed()
    {
        const string file = "date,extension_active (deg),extension_passive (deg)\n2026-03-07,-12,8\n";
        CommandRun asked = Import(file, "--deficits", "positive", "--yes");
        Assert.Equal(ExitCode.BadData, asked.Code);
        Assert.Contains("Asked back, please check:\n  row 2, extension_active (deg): The active extension deficit is less", asked.Data, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
        Assert.Equal(ExitCode.Good, Import(file, "--deficits", "positive", "--yes", "--confirmed").Code);
        Assert.Equal(-12, _bench.Saved("EXAMPLE-07")!.Case.Assessments[^1].Value("extension_active"));
    }

    [Fact]
    public void Sessions_come_in_beside_those_that_are_there()
    {
        int before = _bench.Saved("EXAMPLE-07")!.Case.Sessions.Length;
        Assert.Equal(ExitCode.Good, Import("date,contractions,peak (mA)\n2026-03-07,30,40\n", "--what", "sessions", "--yes").Code);
        Assert.Equal(before + 1, _bench.Saved("EXAMPLE-07")!.Case.Sessions.Length);
    }

    [Fact]
    public void Cells_of_a_plan_that_differ_are_set_by_hand_and_signed_for_again()
    {
        CommandRun done = Import("lane,week,content,reason\nquads-strength,3,-,knee is sore\n", "--what", "plan", "--yes", "--confirmed");
        Assert.Equal((ExitCode.Good, "Saved EXAMPLE-07, plan revision 2: 1 cells set by hand. \"progression check\" tells its findings.\n"), (done.Code, done.Messages));
        PlanCell cell = _bench.Saved("EXAMPLE-07")!.Plan!.At(new CellAddress("quads-strength", 3))!;
        Assert.Equal((null, "knee is sore"), (cell.Content, cell.Pin!.Reason));
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
        Assert.Equal(["csv plan: 1"], Imported());
    }

    [Fact]
    public void What_was_exported_from_a_case_is_there_already()
    {
        foreach (string what in new[] { "measures", "sessions", "plan" })
        {
            string file = Path.Combine(_bench.Folder("out"), what + ".csv");
            _bench.Run("export", "csv", "EXAMPLE-07", "--what", what, "--out", file);
            CommandRun run = _bench.Run("import", "csv", file, "--case", "EXAMPLE-07", "--what", what, "--yes");
            Assert.Equal(ExitCode.Good, run.Code);
            Assert.StartsWith("EXAMPLE-07: nothing that the case has not already.\n", run.Data, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(ExitCode.Usage, "--map: This is not a head and what it is.", "--map", "Bend")]
    [InlineData(ExitCode.Usage, "--dates: The word is not known. Allowed: one of day-first, month-first. Found: \"american\".", "--dates", "american")]
    [InlineData(ExitCode.Usage, "--what: The word is not known. Allowed: one of measures, sessions, plan. Found: \"notes\".", "--what", "notes")]
    public void A_command_line_that_is_not_understood_is_refused(int code, string told, params string[] args)
    {
        CommandRun run = Import(Visit, args);
        Assert.Equal(code, run.Code);
        Assert.Contains(told, run.Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_or_case_that_is_not_there_is_told()
    {
        Assert.Equal(ExitCode.NoInput, _bench.Run("import", "csv", "nowhere.csv", "--case", "EXAMPLE-07").Code);
        Assert.Equal(ExitCode.NoInput, _bench.Run("import", "csv", _bench.File(Visit, "a.csv"), "--case", "NOBODY").Code);
    }

    private CommandRun Import(string text, params string[] more) => _bench.Run(["import", "csv", _bench.File(text, "visit.csv"), "--case", "EXAMPLE-07", .. more]);

    private CommandRun Mapped(string text, params string[] more) =>
        Import(text, ["--map", "Visit day=date", "--map", "Bend=flexion-active deg", "--map", "Remarks=ignore", "--dates", "day-first", .. more]);

    private IEnumerable<string> Imported()
    {
        LiteDbPlanStore store = new(new StoreOptions(_bench.Store, CaseSummary.Of));
        return [.. store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body))
            .Where(note => note.Act == AuditAct.Imported).Select(note => note.What)];
    }
}
