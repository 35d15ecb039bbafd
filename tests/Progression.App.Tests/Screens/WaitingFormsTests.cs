using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Library;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Screens;

/// <summary>A form that was left half done and is gone on with after something else was saved.</summary>
public sealed class WaitingFormsTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;
    private readonly ScreenStack _screens;

    public WaitingFormsTests()
    {
        _store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(_store, fresh: false).Ready);
        _screens = new(new ListFrame(new WorkbookOrder(_store, () => _store), new Farewells()).Plan(DemoStore.Showcase).Frame!);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_session_logged_while_a_visit_waited_is_still_there_when_the_visit_is_saved()
    {
        int sessions = Saved.Case.Sessions.Length;
        Keys("a");
        Line("95");
        Keys("Esc", "s", "Ctrl+S");
        Assert.Equal(sessions + 1, Saved.Case.Sessions.Length);
        Keys("a");
        Line("100");
        Keys("Ctrl+S");
        while (_screens.Top is Frame<AssessState> { State.Mode: AssessMode.Query })
        {
            Keys("y");
        }

        Keys("Ctrl+S");
        Line("as planned");
        Assert.Equal((4, sessions + 1), (Saved.Case.Assessments.Length, Saved.Case.Sessions.Length));
    }

    [Fact]
    public void Correcting_the_last_visit_leaves_a_waiting_one_waiting()
    {
        Keys("a");
        Line("95");
        Keys("Esc", "A", "Esc", "a");
        Assert.Equal("95", Assert.IsType<Frame<AssessState>>(_screens.Top).State.Form.TextOf(MeasureIds.FlexionActive));
    }

    private OpenedCase Saved => _store.Book.Open(DemoStore.Showcase)!;

    private void Line(string text)
    {
        Keys("Ctrl+U");
        _screens.Paste(text);
        Keys("Enter");
    }

    private void Keys(params string[] keys)
    {
        foreach (string key in keys)
        {
            _screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
