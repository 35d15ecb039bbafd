using System.Text;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Exchange;

public sealed class ExportCommandTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public ExportCommandTests() => _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

    public void Dispose() => _bench.Dispose();

    [Theory]
    [InlineData("measures", "code,date,week,visit,measure,title,value,unit,trials,rater,device,position,steps")]
    [InlineData("sessions", "code,date,week,contractions,peak (mA),comfort,evoked (Nm),strong_contraction_tolerated,exercises,pain_before,pain_after,pain_next_morning,skin,adherence (%),note")]
    [InlineData("plan", "code,lane,title,week,from,to,content,set_by_hand,reason")]
    public void A_table_of_each_kind_is_printed_or_written_as_an_exact_file(string what, string header)
    {
        CommandRun printed = _bench.Run("export", "csv", "EXAMPLE-07", "--what", what);
        Assert.Equal(ExitCode.Good, printed.Code);
        Assert.StartsWith(header + "\nEXAMPLE-07,", printed.Data, StringComparison.Ordinal);

        string file = Path.Combine(_bench.Folder("out"), "table.csv");
        Assert.Equal(ExitCode.Good, _bench.Run("export", "csv", "EXAMPLE-07", "--what", what, "--out", file).Code);
        byte[] bytes = File.ReadAllBytes(file);
        Assert.StartsWith(header + "\r\n", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        Assert.Equal(printed.Data, Encoding.UTF8.GetString(bytes).Replace("\r\n", "\n", StringComparison.Ordinal));
        Assert.Equal(ExitCode.CannotCreate, _bench.Run("export", "csv", "EXAMPLE-07", "--what", what, "--out", file).Code);
        Assert.Equal(bytes, File.ReadAllBytes(file));
    }

    [Fact]
    public void The_stim_cells_of_the_plan_stand_in_the_notation_of_the_grid() =>
        Assert.Contains("EXAMPLE-07,stim,Stim,2,2026-03-09,2026-03-15,high 15x2 daily,no,\n", _bench.Run("export", "csv", "EXAMPLE-07", "--what", "plan").Data, StringComparison.Ordinal);

    [Fact]
    public void Each_export_is_written_down_with_what_was_taken_out()
    {
        _bench.Run("export", "csv", "EXAMPLE-07");
        _bench.Run("export", "calendar", "EXAMPLE-07", "--zone", "Europe/London");
        LiteDbPlanStore store = new(new StoreOptions(_bench.Store, CaseSummary.Of));
        Assert.Equal(
            ["measures", "calendar"],
            store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body))
                .Where(note => note.Act == AuditAct.Exported && note.CaseCode == "EXAMPLE-07").Select(note => note.What));
    }

    [Fact]
    public void A_calendar_has_the_hour_and_zone_asked_for_and_names_nobody()
    {
        string calendar = _bench.Run("export", "calendar", "EXAMPLE-07", "--at", "17:30", "--zone", "europe/london").Data;
        Assert.StartsWith("BEGIN:VCALENDAR\n", calendar, StringComparison.Ordinal);
        Assert.Contains("DTSTART;TZID=Europe/London:20260308T173000\n", calendar, StringComparison.Ordinal);
        Assert.DoesNotContain("EXAMPLE-07", calendar, StringComparison.Ordinal);
        Assert.Contains("SUMMARY:EXAMPLE-07: Exercise with stim", _bench.Run("export", "calendar", "EXAMPLE-07", "--with-code").Data, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_that_a_later_revision_dropped_is_called_off_under_its_old_id()
    {
        string before = _bench.Run("export", "calendar", "EXAMPLE-07", "--zone", "UTC").Data;
        Assert.DoesNotContain("CANCELLED", before, StringComparison.Ordinal);
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save", "--weeks", "5");
        string after = _bench.Run("export", "calendar", "EXAMPLE-07", "--zone", "UTC").Data;
        string[] called = [.. Entries(after).Where(entry => entry.Contains("STATUS:CANCELLED", StringComparison.Ordinal)).Select(Id)];
        Assert.Equal(8, called.Length); // The days of week 6 and the reassessment on its first day.
        Assert.Empty(called.Except(Entries(before).Select(Id)));
        Assert.All(Entries(after), entry => Assert.Contains("SEQUENCE:2\n", entry, StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_of_which_nothing_lies_ahead_is_told_and_no_file_is_written()
    {
        string file = Path.Combine(_bench.Folder("out"), "plan.ics");
        string old = _bench.File(PlanBench.Example.Replace("2026-", "2024-", StringComparison.Ordinal), "old.yaml");
        CommandRun run = _bench.Run("export", "calendar", old, "--out", file);
        Assert.NotEqual(ExitCode.Good, run.Code);
        Assert.Contains("Nothing of the plan lies ahead; draft it for more weeks first.", run.Messages, StringComparison.Ordinal);
        Assert.False(File.Exists(file));
    }

    [Theory]
    [InlineData("--at", "25:00", "--at: This is not an hour. Allowed: hour and minute from 0:00 to 23:59, as 17:30. Found: \"25:00\".")]
    [InlineData("--zone", "Europe/Lndon", "--zone: There is no such time zone. Did you mean \"Europe/London\"? Allowed: a name of the time zone database, as Europe/London or America/New_York. Found: \"Europe/Lndon\".")]
    public void What_is_no_hour_or_zone_is_refused(string option, string value, string told)
    {
        CommandRun run = _bench.Run("export", "calendar", "EXAMPLE-07", option, value);
        Assert.Equal((ExitCode.Usage, "", $"progression export calendar: {told}\n"), (run.Code, run.Data, run.Messages));
    }

    private static string[] Entries(string calendar) => calendar.Split("BEGIN:VEVENT\n")[1..];

    private static string Id(string entry) => entry.Split('\n').Single(line => line.StartsWith("UID:", StringComparison.Ordinal));
}
