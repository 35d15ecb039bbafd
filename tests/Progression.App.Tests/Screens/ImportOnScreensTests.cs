using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Imports;
using Progression.App.Pictures;
using Progression.App.Plain;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Core.Library;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Tests.Screens;

/// <summary>Files of other programs brought into a case by keys, on a real store.</summary>
public sealed class ImportOnScreensTests : IDisposable
{
    private readonly TempStore _temp = new();

    public ImportOnScreensTests() => Assert.True(DemoStore.Prepare(_temp.Open(_temp.Demo), fresh: false).Ready);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Readings_are_shown_first_and_come_in_with_a_yes()
    {
        string file = File("readings.csv", "date,flexion_active (deg)\r\n2026-11-24,97\r\n2026-11-25,98\r\n");
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Named(screens, file);

        Assert.Equal(ImportMode.Preview, State(screens).Mode);
        Assert.Contains(State(screens).Preview, line => line.Contains("Active flexion  97 deg", StringComparison.Ordinal));
        Assert.Equal(3, Visits());
        Confirmed(screens);
        Assert.StartsWith("2 came in and are saved.", screens.Top!.Told, StringComparison.Ordinal);
        Assert.Equal("Grid", screens.Top.Where.Screen);
        Assert.Equal((5, 98), (Visits(), (int)Saved().Case.Assessments[^1].Readings[MeasureIds.FlexionActive].Value));
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, CaseSummary.Of));
        Assert.Contains(store.History(AuditChain.Code, RecordKind.Audit), entry =>
            AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, entry.Revision)!.Body) is { Act: AuditAct.Imported, CaseCode: "LARK-03", What: "csv measures: 2" });
    }

    [Fact]
    public void One_value_out_of_range_keeps_everything_out()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Named(screens, File("readings.csv", "date,flexion_active (deg)\r\n2026-11-24,97\r\n2026-11-25,980\r\n"));
        Assert.Contains(State(screens).Preview, line => line.Contains("row 3", StringComparison.Ordinal) && line.Contains("980", StringComparison.Ordinal));
        Keys(screens, "y");
        Assert.StartsWith("Something in the file is refused", screens.Top!.Told, StringComparison.Ordinal);
        Keys(screens, "Esc Esc");
        Assert.Equal(("Grid", 3), (screens.Top.Where.Screen, Visits()));
    }

    [Fact]
    public void Cells_come_in_as_changes_that_can_be_taken_back()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "I Down Down");
        screens.Paste(File("cells.csv", "lane,week,content\r\nflexion,6,91 deg\r\n"));
        Keys(screens, "Enter");
        Confirmed(screens);

        GridState grid = Assert.IsType<Frame<GridState>>(screens.Top).State;
        Assert.Equal((true, "1 cells came in, set by hand. Ctrl+S saves them, u takes them back."), (grid.IsUnsaved, grid.Status));
        Assert.Equal("91 deg", CellText(grid));
        Keys(screens, "u");
        Assert.False(Assert.IsType<Frame<GridState>>(screens.Top).State.IsUnsaved);
    }

    [Theory]
    [InlineData("nowhere.csv", "The file cannot be read.")]
    [InlineData("", "Type the name of the file first.")]
    public void A_file_that_is_not_there_leaves_the_caret_in_its_name(string name, string told)
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Named(screens, name);
        Assert.Equal((ImportMode.File, name), (State(screens).Mode, State(screens).Name.Text));
        Assert.Contains(told, screens.Top!.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_the_program_is_another_account_only_files_of_the_clinics_folder_are_read()
    {
        string file = File("readings.csv", "date,flexion_active (deg)\r\n2026-11-24,97\r\n");
        ClinicSettings clinic = new() { Accounts = ClinicAccounts.Sudo, Roles = [(ClinicRole.Therapist, "t")], PapersFolder = Path.GetDirectoryName(file) };
        ScreenStack screens = Plan(_temp.Open(_temp.Demo) with { Clinic = clinic });
        Named(screens, file);
        Assert.StartsWith("Only a file name is taken here", screens.Top!.Told, StringComparison.Ordinal);
        Keys(screens, "Ctrl+U");
        screens.Paste("readings.csv");
        Keys(screens, "Enter");
        Assert.Equal(ImportMode.Preview, State(screens).Mode);
    }

    [Fact]
    public void It_can_be_said_in_line_mode()
    {
        PlainTalk talk = new(Plan(_temp.Open(_temp.Demo)));
        talk.Begin();
        Assert.Contains(talk.Hear("bring readings in from a file"), line => line.Contains("Name of the file", StringComparison.Ordinal));
        Assert.Contains(talk.Hear(File("readings.csv", "date,flexion_active (deg)\r\n2026-11-24,97\r\n")), line => line.Contains("97", StringComparison.Ordinal));
        string[] said = [.. talk.Hear("bring all of it in")];
        Assert.Contains(said.Concat(talk.Hear("bring all of it in")), line => line.Contains("1 came in and are saved.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("import", "")]
    [InlineData("import-preview", "date,flexion_active (deg)\r\n2026-11-24,97\r\n")]
    [InlineData("import-refused", "date,flexion_active (deg)\r\n2026-11-24,970\r\n2026-11-25,97\r\n")]
    public void Looks_as_reviewed(string name, string table)
    {
        string file = File("readings.csv", table);
        ScreenStack screens = Plan(_temp.Open(_temp.Demo) with { Clinic = new() { Accounts = ClinicAccounts.Own, Roles = [], PapersFolder = "/srv/progression-papers" } });
        Keys(screens, "I");
        if (table.Length > 0)
        {
            screens.Paste(file);
            Keys(screens, "Enter");
        }

        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(screens.Draw(size).Fit(size), $"{name}-{size.Width}x{size.Height}");
        }
    }

    private static void Named(ScreenStack screens, string file)
    {
        Keys(screens, "I");
        screens.Paste(file);
        Keys(screens, "Enter");
    }

    // A second yes where something was asked back.
    private static void Confirmed(ScreenStack screens)
    {
        Keys(screens, "y");
        if (screens.Top is Frame<ImportState>)
        {
            Keys(screens, "y");
        }
    }

    private string File(string name, string text)
    {
        string path = Path.Combine(_temp.DataHome, name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    private OpenedCase Saved() => _temp.Open(_temp.Demo).Book.Open(DemoStore.Showcase)!;

    private int Visits() => Saved().Case.Assessments.Length;

    private static string CellText(GridState grid)
    {
        int lane = grid.Plan.Lanes.ToList().FindIndex(one => one.Id == "flexion");
        return Core.Plans.CellNotation.Text(grid.Plan.Lanes[lane], grid.Plan.At(new("flexion", 6))?.Content, grid.Desk.Library);
    }

    private static ScreenStack Plan(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);

    private static ImportState State(ScreenStack screens) => Assert.IsType<Frame<ImportState>>(screens.Top).State;

    private static void Keys(ScreenStack screens, string keys)
    {
        foreach (string key in keys.Split(' '))
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
