using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Grid;
using Progression.App.Propose;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.App.Trying;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Screens;

/// <summary>The second user's job through the stack of screens on a real store: measured again, proposed, decided, saved.</summary>
public sealed class ReassessmentOnScreensTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;
    private readonly ScreenStack _screens;

    public ReassessmentOnScreensTests()
    {
        _store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(_store, fresh: false).Ready);
        _screens = Open();
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_visit_is_typed_the_proposal_taken_and_all_of_it_is_saved_at_once()
    {
        Visit();
        Keys("Ctrl+S");
        Assert.IsType<Frame<ProposeState>>(_screens.Top);
        Keys("a", "Ctrl+S");

        GridState grid = Grid;
        Assert.StartsWith("Saved: the assessment, and ", grid.Status, StringComparison.Ordinal);
        OpenedCase saved = Saved;
        Assert.Equal((4, 105), (saved.Case.Assessments.Length, saved.Case.Assessments[^1].Value(MeasureIds.FlexionActive)));
        Assert.Equal(_store.Today, saved.Plan!.Decision!.Assessment);
        Assert.True(saved.Plan.Decision.Taken > 0);
        Assert.NotEmpty(saved.Forecasts);
        Assert.False(grid.IsUnsaved);
        // The grid goes on from what was saved: an edit can be saved over it.
        Keys("x", "Ctrl+S");
        Assert.Equal("Saved.", Grid.Status);
    }

    [Fact]
    public void A_visit_kept_under_a_wrong_day_moves_with_its_forecasts()
    {
        Visit();
        Keys("Ctrl+S", "a", "Ctrl+S", "A", "Up", "Up", "Ctrl+U");
        _screens.Paste("yesterday");
        Keys("Enter", "Ctrl+S", "Enter");
        _screens.Paste("logged late");
        Keys("Enter");
        while (_screens.Top is Frame<AssessState> { State.Mode: AssessMode.Query })
        {
            Keys("y");
        }

        Keys("Ctrl+S");
        if (_screens.Top is Frame<ProposeState> { State.Mode: ProposeMode.Reason })
        {
            _screens.Paste("the plan is right");
            Keys("Enter");
        }

        DateOnly right = _store.Today.AddDays(-1);
        Assert.Equal(right, Saved.Case.Assessments[^1].Date);
        Assert.Equal(_store.Today, Assert.IsType<VisitCorrection.DayWas>(Assert.Single(Saved.Case.Assessments[^1].Corrected)).Was);
        Assert.Contains(Saved.Forecasts, one => one.MadeOn == right);
        Assert.DoesNotContain(Saved.Forecasts, one => one.MadeOn == _store.Today || one.Score?.On == _store.Today);
    }

    [Fact]
    public void Left_without_deciding_nothing_is_saved_and_the_visit_is_still_there()
    {
        Visit();
        Keys("Ctrl+S", "Esc");
        Assert.IsType<Frame<AssessState>>(_screens.Top);
        Keys("Esc");
        Assert.Equal(3, Saved.Case.Assessments.Length);
        Assert.Contains("a goes on with it", Grid.Status, StringComparison.Ordinal);
        Keys("a");
        Assert.Equal("105", Assert.IsType<Frame<AssessState>>(_screens.Top).State.Form.TextOf(MeasureIds.FlexionActive));
    }

    [Fact]
    public void Nothing_taken_asks_for_a_reason_and_the_plan_stays()
    {
        Visit();
        Keys("Ctrl+S", "Ctrl+S");
        _screens.Paste("wait for the surgeon");
        Keys("Enter");
        Assert.Equal((0, "wait for the surgeon"), (Saved.Plan!.Decision!.Taken, Saved.Plan.Decision.Reason));
        Assert.Equal(4, Saved.Case.Assessments.Length);
    }

    [Fact]
    public void A_save_by_somebody_else_in_between_is_told_on_the_proposal_and_nothing_is_lost()
    {
        Visit();
        Keys("Ctrl+S", "a");
        OpenStore other = _temp.Open(_temp.Demo, new("1002", "ben"));
        OpenedCase theirs = other.Book.Open(DemoStore.Showcase)!;
        Assert.IsType<SaveResult.Saved>(other.Book.Save(theirs.Case with { Therapist = "BE" }, theirs));
        Keys("Ctrl+S");
        Assert.Contains("Somebody saved first", Assert.IsType<Frame<ProposeState>>(_screens.Top).State.Status, StringComparison.Ordinal);
        Assert.Equal(3, Saved.Case.Assessments.Length);
        Keys("Esc");
        Assert.Equal("105", Assert.IsType<Frame<AssessState>>(_screens.Top).State.Form.TextOf(MeasureIds.FlexionActive));
    }

    [Fact]
    public void A_correction_keeps_the_old_value()
    {
        Keys("A", "Ctrl+U");
        _screens.Paste("95");
        Keys("Enter", "Ctrl+S");
        _screens.Paste("KL");
        Keys("Enter");
        _screens.Paste("misread");
        Keys("Enter");
        Keys(_screens.Top is Frame<AssessState> ? ["Ctrl+S"] : []);
        Keys("Ctrl+S");
        _screens.Paste("nothing to change");
        Keys("Enter");
        Core.People.Reading flexion = Saved.Case.Assessments[^1].Readings[MeasureIds.FlexionActive];
        Assert.Equal((3, 95, 92, "misread"), (Saved.Case.Assessments.Length, flexion.Value, flexion.Corrected[^1].Was, flexion.Corrected[^1].Why));
    }

    [Fact]
    public void A_try_out_saves_nothing_whatever_is_changed_in_it()
    {
        long before = _store.Book.Generation();
        Keys("T", "Ctrl+U");
        _screens.Paste("60");
        Keys("F2", "x");
        Assert.True(Assert.IsType<Frame<GridState>>(_screens.Top).State.IsScratch);
        Keys("Ctrl+S", "a", "q");
        Assert.IsType<Frame<TryState>>(_screens.Top);
        Keys("Esc");
        Assert.False(Grid.IsScratch);
        Assert.Equal(92, Grid.Desk.Case.Assessments[^1].Value(MeasureIds.FlexionActive));
        Assert.Equal(before, _store.Book.Generation());
        Assert.False(_store.Drafts.Has(DemoStore.Showcase));
    }

    [Fact]
    public void An_unsaved_plan_is_saved_before_a_visit_is_entered()
    {
        Keys("G", "k", "k", "k", "k", "x");
        Assert.True(Grid.IsUnsaved);
        Keys("a");
        Assert.Contains("Ctrl+S saves them", Grid.Status, StringComparison.Ordinal);
    }

    [Fact]
    public void A_red_flag_answered_withholds_forecasts_until_a_note_closes_it()
    {
        Keys("r", "y", "Ctrl+S");
        Assert.Contains("red flag", Grid.Desk.Forecast(MeasureIds.FlexionActive).WhyNot, StringComparison.Ordinal);
        Keys("r");
        foreach (int _ in Enumerable.Range(0, 20))
        {
            Keys("c");
            _screens.Paste("Dr N");
            Keys("Enter");
            _screens.Paste("seen, tendon whole");
            Keys("Ctrl+S", "Down");
        }

        Keys("Esc");
        Assert.Equal("", Grid.Status);
        Assert.NotNull(Grid.Desk.Forecast(MeasureIds.FlexionActive).Forecast);
        Assert.Equal("Dr N", Saved.Case.FlagNotes[^1].By);
    }

    [Fact]
    public void A_form_that_waited_does_not_write_over_what_was_saved_meanwhile()
    {
        Keys("r", "y", "Esc", "s", "Ctrl+S");
        int logged = Saved.Case.Sessions.Length;
        Keys("r", "Ctrl+S");
        Assert.Equal((logged, true), (Saved.Case.Sessions.Length, Saved.Case.Sessions[^1].Date == _store.Today));
        Assert.Contains(Core.People.Answer.Yes, Saved.Case.Assessments.Single(visit => visit.Date == _store.Today).SignsSeen.Values);
    }

    [Fact]
    public void Comparison_chart_flags_and_log_open_and_close()
    {
        foreach (string key in new[] { "m", "e", "r", "s" })
        {
            Keys(key);
            Assert.IsNotType<Frame<GridState>>(_screens.Top);
            Assert.NotEmpty(_screens.Draw(new(80, 24)).Text);
            Keys("Esc");
            Assert.IsType<Frame<GridState>>(_screens.Top);
        }
    }

    private GridState Grid => Assert.IsType<Frame<GridState>>(_screens.Top).State;

    private OpenedCase Saved => _store.Book.Open(DemoStore.Showcase)!;

    private ScreenStack Open() => new(new ListFrame(new WorkbookOrder(_store, () => _store), new Farewells()).Plan(DemoStore.Showcase).Frame!);

    private void Visit()
    {
        Keys("a");
        foreach (string value in new[] { "105", "110", "4", "3" })
        {
            _screens.Paste(value);
            Keys("Enter");
        }
    }

    private void Keys(params string[] keys)
    {
        foreach (string key in keys)
        {
            _screens.Press(key, key.Length == 1 ? key : null);
        }
    }
}
