using Progression.App.Actions;
using Progression.App.Screens;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Storage;
using Progression.SeedDemo;

namespace Progression.App.Tests.Screens;

/// <summary>The list on a real store that others save to as well.</summary>
public sealed class ListFrameTests : IDisposable
{
    private static readonly Actor Kim = new("1002", "kim");
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;
    private readonly ScreenStack _screens;

    public ListFrameTests()
    {
        _store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(_store, fresh: false).Ready);
        _screens = new(new ListFrame(new WorkbookOrder(_store, () => _store), new Farewells()).Open());
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void What_somebody_else_saved_is_seen_when_the_list_is_read_again_or_come_back_to()
    {
        SaveAsKim("CRANE-12");
        Assert.Equal("anna", By("CRANE-12"));

        Keys("Ctrl+R");
        Assert.Equal("kim", By("CRANE-12"));

        Keys("/", "o", "w", "l", "Enter");
        SaveAsKim("DUNLIN-04");
        Keys("q");
        Assert.Equal(("kim", "owl", "OWL-01"), (By("DUNLIN-04"), List.Choice.Find, List.Chosen!.Code.Text));
    }

    [Fact]
    public void A_draft_that_is_kept_is_seen_on_coming_back()
    {
        OpenedCase opened = _store.Book.Open(CaseCode.Parse("AVOCET-10")!)!;
        _store.Drafts.Keep(new KeptDraft(opened.Plan!, opened.PlanStamp!.Reference));

        Keys("End", "Enter", "q");

        Assert.True(List.Cases.Single(line => line.Code.Text == "AVOCET-10").HasDraft);
        Assert.False(List.Cases.Single(line => line.Code.Text == "CRANE-12").HasDraft);
    }

    [Fact]
    public void Another_day_is_judged_anew()
    {
        Assert.False(Due("TERN-11"));

        _temp.Clock.Now = _temp.Clock.Now.AddDays(5);
        Keys("Ctrl+R");

        Assert.True(Due("TERN-11"));
    }

    [Fact]
    public void An_index_that_is_gone_is_made_again_and_shows_the_same()
    {
        string[] before = [.. List.Shown.Select(line => line.Code.Text)];
        File.Delete(Path.Combine(_temp.Demo, "plans.db"));

        Keys("Ctrl+R");

        Assert.Equal(before, List.Shown.Select(line => line.Code.Text));
    }

    private StartState List => ((Frame<StartState>)_screens.Top!).State;

    private bool Due(string code) => List.Cases.Single(line => line.Code.Text == code).Standing!.IsDue;

    private string By(string code) => List.Cases.Single(line => line.Code.Text == code).SavedBy;

    private void Keys(params string[] keys)
    {
        foreach (string key in keys)
        {
            _screens.Press(key, key.Length == 1 ? key : null);
        }
    }

    private void SaveAsKim(string code)
    {
        _temp.Clock.Now = _temp.Clock.Now.AddMinutes(1);
        OpenStore other = _temp.Open(_temp.Demo, Kim);
        OpenedCase opened = other.Book.Open(CaseCode.Parse(code)!)!;
        Assert.IsType<SaveResult.Saved>(other.Book.Save(DemoCaseload.AtFirstVisit(opened.Case) with { Stimulator = "Another one" }, opened));
    }
}
