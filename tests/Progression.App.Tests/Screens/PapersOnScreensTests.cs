using Progression.App.Actions;
using Progression.App.Papers;
using Progression.App.Pictures;
using Progression.App.Plain;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Clinic;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Clinic;
using Progression.Records.Storage;

namespace Progression.App.Tests.Screens;

/// <summary>Printing by keys, on a real store.</summary>
public sealed class PapersOnScreensTests : IDisposable
{
    private readonly TempStore _temp = new();

    public PapersOnScreensTests() => Assert.True(DemoStore.Prepare(_temp.Open(_temp.Demo), fresh: false).Ready);

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void The_home_sheet_is_printed_with_three_keys_and_it_is_written_down()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "E Enter Enter");

        string path = Path.Combine(_temp.Demo, "papers", "LARK-03-home-sheet-week-4.txt");
        Assert.Equal($"Written: {path}", screens.Top!.Told);
        Assert.StartsWith("Your exercises at home\n", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Contains("UNSIGNED DRAFT", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal((AuditAct.Printed, "LARK-03", "home sheet"), (Printed().Act, Printed().CaseCode, Printed().What));
        Keys(screens, "Enter Enter");
        Assert.StartsWith("Not written: ", screens.Top.Told, StringComparison.Ordinal);
        Assert.Contains("is there already", screens.Top.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bundle_for_another_program_says_who_saved_the_plan()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "E" + string.Concat(Enumerable.Repeat(" Down", PaperShelf.All.IndexOf(ExchangePapers.Bundle))) + " Enter Enter");

        string bundle = File.ReadAllText(Path.Combine(_temp.Demo, "papers", "LARK-03-fhir-bundle.json"));
        Assert.Contains("\"resourceType\": \"Provenance\"", bundle, StringComparison.Ordinal);
        Assert.Contains("\"LARK-03/", bundle, StringComparison.Ordinal);
    }

    [Fact]
    public void Format_and_week_are_chosen_and_stand_in_the_name()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "E Right + Enter");
        Assert.Equal("LARK-03-home-sheet-week-5.html", State(screens).Name.Text);
        Keys(screens, "Esc - - -");
        Assert.Equal(2, State(screens).Order.Week);
        Keys(screens, "Left Space");
        Assert.Equal(PapersMode.Reading, State(screens).Mode);
        Assert.Contains(State(screens).Text, line => line.Contains("Week 2 after the operation", StringComparison.Ordinal));
        Keys(screens, "Esc Esc");
        Assert.Equal("Grid", screens.Top!.Where.Screen);
    }

    [Fact]
    public void A_name_that_is_none_leaves_the_caret_in_it()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "E Enter Ctrl+U");
        screens.Paste(".bashrc");
        Keys(screens, "Enter");

        Assert.Equal((PapersMode.Name, ".bashrc"), (State(screens).Mode, State(screens).Name.Text));
        Assert.StartsWith("Not written: The name must end with .txt", screens.Top!.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_folder_of_the_clinic_nothing_is_written_where_the_program_is_another_account()
    {
        ClinicSettings clinic = new() { Accounts = ClinicAccounts.Sudo, Roles = [(ClinicRole.Therapist, "t")] };
        ScreenStack screens = Plan(_temp.Open(_temp.Demo) with { Clinic = clinic });
        Keys(screens, "E Enter");
        Assert.Equal("No folder for papers is set: papers_folder in clinic.yaml names it.", screens.Top!.Told);

        screens = Plan(_temp.Open(_temp.Demo) with { Clinic = clinic with { PapersFolder = Path.Combine(_temp.DataHome, "out"), PrintHeader = "Knee clinic, first floor", PrintContact = "the clinic, extension 12" } });
        Keys(screens, "E Enter Enter");
        string sheet = File.ReadAllText(Path.Combine(_temp.DataHome, "out", "LARK-03-home-sheet-week-4.txt"));
        Assert.Contains("Knee clinic, first floor", sheet, StringComparison.Ordinal);
        Assert.Contains("Call the clinic, extension 12.", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_with_unsaved_changes_is_saved_first()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "x E");
        Assert.StartsWith("The plan has unsaved changes", screens.Top!.Told, StringComparison.Ordinal);
    }

    [Fact]
    public void Tables_and_the_calendar_are_taken_out_by_key_and_read_here_line_by_line()
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo));
        Keys(screens, "E");
        foreach ((string paper, string file, string begins) in new[] { ("measures", "LARK-03-measures.csv", "code,date,week,visit,measure,"), ("calendar", "LARK-03-calendar.ics", "BEGIN:VCALENDAR") })
        {
            Keys(screens, "Home");
            Keys(screens, string.Join(' ', Enumerable.Repeat("Down", State(screens).Papers.TakeWhile(one => one.Name != paper).Count())) + " Space");
            Assert.StartsWith(begins, State(screens).Text[0], StringComparison.Ordinal);
            Assert.DoesNotContain(State(screens).Text, line => line.Contains('\r', StringComparison.Ordinal));
            Keys(screens, "Esc Enter Enter");
            Assert.StartsWith(begins, File.ReadAllText(Path.Combine(_temp.Demo, "papers", file)), StringComparison.Ordinal);
            Assert.Equal(paper, Note(AuditAct.Exported).What);
        }
    }

    [Fact]
    public void It_can_be_said_in_line_mode()
    {
        PlainTalk talk = new(Plan(_temp.Open(_temp.Demo)));
        talk.Begin();
        Assert.Contains(talk.Hear("print or take out"), line => line.Contains("Home sheet: a week in plain words", StringComparison.Ordinal));
        Assert.Contains(talk.Hear("write it as a file"), line => line.Contains("Name of the file", StringComparison.Ordinal));
        Assert.Contains(talk.Hear(""), line => line.StartsWith("Written: ", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("papers", "E")]
    [InlineData("papers-name", "E Right Enter")]
    [InlineData("papers-help", "E ?")]
    [InlineData("papers-read", "E Space")]
    public void Looks_as_reviewed(string name, string keys)
    {
        ScreenStack screens = Plan(_temp.Open(_temp.Demo) with { Clinic = new() { Accounts = ClinicAccounts.Own, Roles = [], PapersFolder = "/srv/progression-papers" } });
        Keys(screens, keys);
        foreach (PictureSize size in new PictureSize[] { new(80, 24), new(200, 60) })
        {
            Faces.Match(screens.Draw(size).Fit(size), $"{name}-{size.Width}x{size.Height}");
        }
    }

    private static ScreenStack Plan(OpenStore store) => new(new ListFrame(new WorkbookOrder(store, () => store), new Farewells()).Plan(DemoStore.Showcase).Frame!);

    private static PapersState State(ScreenStack screens) => Assert.IsType<Frame<PapersState>>(screens.Top).State;

    private AuditNote Printed() => Note(AuditAct.Printed);

    private AuditNote Note(AuditAct act)
    {
        LiteDbPlanStore store = new(new StoreOptions(_temp.Demo, CaseSummary.Of));
        return store.History(AuditChain.Code, RecordKind.Audit).Select(entry => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, entry.Revision)!.Body)).Last(note => note.Act == act);
    }

    private static void Keys(ScreenStack screens, string keys)
    {
        foreach (string key in keys.Split(' '))
        {
            screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
