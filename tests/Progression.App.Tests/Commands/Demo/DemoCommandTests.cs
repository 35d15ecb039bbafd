using System.Runtime.Versioning;
using Progression.App.Commands;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Demo;

[SupportedOSPlatform("linux")]
public sealed class DemoCommandTests
{
    private static readonly CaseCode Showcase = DemoStore.Showcase;

    [Fact]
    public void Prints_the_caseload_and_the_showcase_plan_with_its_findings_where_there_is_no_terminal()
    {
        using TempStore temp = new();
        CommandRun run = temp.Run("demo");
        Assert.Equal((ExitCode.Good, ""), (run.Code, run.Messages));
        Assert.Matches(@"\nCode +Knee +Operated +Week +Phase now +Findings\n", run.Data);
        Assert.Matches(@"\nDUNLIN-04 +(left|right) +2026-11-02 +4 of 6 +stim barred +X 3 stops", run.Data);
        Assert.Matches(@"\nOWL-01 +(left|right) +2026-09-16 +11 of 16 +stopped ", run.Data);
        Assert.Contains("\nLARK-03: Total knee replacement", run.Data, StringComparison.Ordinal);
        Assert.Contains("week 4 ▼ now", run.Data, StringComparison.Ordinal);
        Assert.Contains("i note: Ladder on 2026-11-19", run.Data, StringComparison.Ordinal);
        Assert.EndsWith("local law.", run.Data.TrimEnd(), StringComparison.Ordinal);
    }

    [Fact]
    public void Asked_for_again_the_same_day_it_is_as_it_was_left()
    {
        using TempStore temp = new();
        string first = temp.Run("demo").Data;
        long made = temp.Open(temp.Demo).Book.Generation();
        Assert.Equal(first, temp.Run("demo").Data);
        Assert.Equal(made, temp.Open(temp.Demo).Book.Generation());

        Change(temp);
        temp.Run("demo");
        Assert.Null(temp.Open(temp.Demo).Book.Open(Showcase)!.Plan!.ContentAt("bend", 4));
    }

    [Fact]
    public void Fresh_starts_over()
    {
        using TempStore temp = new();
        string first = temp.Run("demo").Data;
        Change(temp);
        Assert.NotEqual(first, temp.Run("demo").Data);
        Assert.Equal(first, temp.Run("demo", "--fresh").Data);
    }

    [Theory]
    [InlineData("demo")]
    [InlineData("demo", "--fresh")]
    public void A_folder_that_is_not_a_demo_is_never_touched(params string[] words)
    {
        using TempStore temp = new();
        string file = Path.Combine(temp.Own, "plans.journal");
        Directory.CreateDirectory(temp.Own, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        File.WriteAllText(file, "somebody's records");
        CommandRun run = temp.Run([.. words, "--store", temp.Own]);
        Assert.Equal(ExitCode.CannotCreate, run.Code);
        Assert.Contains("is not a demo's folder", run.Messages, StringComparison.Ordinal);
        Assert.Equal([file], Directory.GetFileSystemEntries(temp.Own));
        Assert.Equal("somebody's records", File.ReadAllText(file));
    }

    [Fact]
    public void On_another_day_an_untouched_demo_moves_along_and_a_changed_one_is_kept()
    {
        using TempStore temp = new();
        temp.Run("demo");
        temp.Clock.Now = temp.Clock.Now.AddDays(2);
        Assert.Equal(new DateOnly(2026, 11, 27), Today(temp));

        Change(temp);
        temp.Clock.Now = temp.Clock.Now.AddDays(1);
        Assert.Equal(new DateOnly(2026, 11, 27), Today(temp));
        Assert.Contains("This demo was made on 2026-11-27 and changed since", temp.Run("demo").Messages, StringComparison.Ordinal);
    }

    [Fact]
    public void A_demo_that_was_cut_short_while_it_was_made_is_made_again()
    {
        using TempStore temp = new();
        string whole = temp.Run("demo").Data;
        string marker = Path.Combine(temp.Demo, "demo-scenario");
        File.WriteAllLines(marker, [File.ReadAllLines(marker)[0], "2026-11-25", "being made"]);
        Change(temp);
        Assert.Equal(whole, temp.Run("demo").Data);
    }

    [Fact]
    public void On_a_terminal_the_workbook_opens_on_the_showcase()
    {
        using TempStore temp = new();
        WorkbookOrder? asked = null;
        CliEnvironment terminal = temp.Environment with { HasTerminal = true, OpenWorkbook = order => { asked = order; return 5; } };
        CommandRun run = CommandRun.In(terminal, "demo");
        Assert.Equal((5, ""), (run.Code, run.Data));
        Assert.Equal((Showcase, false, true, temp.Demo), (asked!.Code, asked.OnlyThat, asked.Store.IsDemo, asked.Store.Folder));
    }

    /// <summary>Empties a cell of the showcase and saves it.</summary>
    private static void Change(TempStore temp)
    {
        OpenStore store = temp.Open(temp.Demo);
        OpenedCase opened = store.Book.Open(Showcase)!;
        Assert.IsType<SaveResult.Saved>(store.Book.Save(PlanEdit.Set(opened.Plan!, new CellAddress("bend", 4), null), opened.PlanStamp!.Reference));
    }

    /// <summary>The day the demo is of, by the showcase's last assessment.</summary>
    private static DateOnly Today(TempStore temp)
    {
        temp.Run("demo");
        CaseRow row = temp.Open(temp.Demo).Book.List(new CaseQuery { Text = Showcase.Text }).Rows.Single();
        // The showcase was last assessed six days before the day the demo was made for.
        return DateOnly.ParseExact(row.Fields[CaseSummary.LastAssessed], "O", System.Globalization.CultureInfo.InvariantCulture).AddDays(6);
    }
}
