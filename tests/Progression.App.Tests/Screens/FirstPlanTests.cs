using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Grid;
using Progression.App.Intake;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Screens;

/// <summary>A therapist's first plan in an empty store, through all screens and onto the disk. Today is Wednesday, 25 November 2026.</summary>
public sealed class FirstPlanTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly OpenStore _store;
    private readonly CountedScreens _screens;

    public FirstPlanTests()
    {
        _store = _temp.Open(_temp.Own);
        _screens = new(_store);
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void A_new_therapists_first_plan_with_stim_in_it_takes_at_most_60_keystrokes_beyond_the_values()
    {
        _screens.Keys("n");
        _screens.Lines("wren-01", "last mon", "l", "wbat");
        _screens.Keys("Ctrl+S", "a", "y", "Ctrl+S");
        _screens.Lines("78", "84", "14");
        _screens.Keys("1");
        _screens.Lines("8");
        _screens.Keys("Down", "Down", "Down");
        _screens.Lines("24");
        _screens.Keys("PgDn", "PgDn");
        _screens.Lines("3", "5");
        _screens.Keys("Ctrl+N", "Ctrl+N");
        _screens.Lines("y", "y", "y");
        _screens.Keys("Ctrl+S");
        for (; _screens.Top is Frame<AssessState>; _screens.Keys("y"))
        {
            Assert.Equal(AssessMode.Query, _screens.State<AssessState>().Mode);
        }

        OpenedCase saved = Saved();
        Assert.Equal(6, saved.Plan!.Weeks);
        Assert.Empty(saved.Plan.StimBarred);
        Assert.NotNull(saved.Plan.ContentAt(Lanes.Stim, 1));
        Assert.Equal((78, 14, 24), (saved.Case.Assessments[0].Value(MeasureIds.FlexionActive), saved.Case.Assessments[0].Value(MeasureIds.ExtensionActive), saved.Case.Assessments[0].Value(MeasureIds.QuadricepsTorque)));
        Assert.Equal(22, saved.Case.Screening.Answers.Count);
        Assert.False(_screens.State<GridState>().IsUnsaved);
        Assert.InRange(_screens.Keystrokes, 1, 60);
        TestContext.Current.TestOutputHelper!.WriteLine($"{_screens.Keystrokes} keystrokes beyond the values");
    }

    [Fact]
    public void Each_step_can_be_skipped_and_says_what_follows()
    {
        Typed();
        Assert.Contains("Esc skips", _screens.State<ScreeningState>().Status, StringComparison.Ordinal);
        _screens.Keys("Esc");
        Assert.Contains("stim stays barred", _screens.State<AssessState>().Status, StringComparison.Ordinal);
        _screens.Keys("Esc");
        Assert.Contains("goes by the calendar", _screens.State<GridState>().Status, StringComparison.Ordinal);
        Assert.NotEmpty(Saved().Plan!.StimBarred);
        _screens.Keys("q");
        Assert.Equal("WREN-01", _screens.State<StartState>().Chosen!.Code.Text);
    }

    [Fact]
    public void A_case_that_was_left_on_the_way_goes_on_where_it_stopped()
    {
        Typed();
        CountedScreens later = new(_store);
        Assert.Contains("none", later.Text, StringComparison.Ordinal);
        later.Keys("Enter", "a", "y", "Ctrl+S");
        CountedScreens again = new(_store);
        again.Keys("Enter");
        Assert.Equal(22, again.State<AssessState>().Desk.Case.Screening.Answers.Count);
        again.Keys("Esc");
        Assert.NotNull(Saved().Plan!.LaneOf(Lanes.Stim));
    }

    [Fact]
    public void A_new_case_that_was_left_half_typed_waits()
    {
        _screens.Keys("n");
        _screens.Lines("wren-01");
        _screens.Types("16 n");
        _screens.Keys("Esc");
        Assert.Contains("n goes on with it", _screens.State<StartState>().Status, StringComparison.Ordinal);
        _screens.Keys("n");
        Assert.Equal(("WREN-01", "16 n", IntakeLines.Operated), (Line("code"), Line("operated"), _screens.State<IntakeState>().Form.Current.Id));
        _screens.Keys("Ctrl+D", "Esc");
        Assert.Equal("No case was made.", _screens.State<StartState>().Status);
    }

    [Fact]
    public void First_readings_that_were_left_half_typed_wait_in_the_grid()
    {
        Typed();
        _screens.Keys("Esc");
        _screens.Lines("95");
        _screens.Keys("Esc");
        Assert.Contains("a goes on with them", _screens.State<GridState>().Status, StringComparison.Ordinal);
        _screens.Keys("a");
        Assert.Equal("95", _screens.State<AssessState>().Form.TextOf(MeasureIds.FlexionActive));
    }

    [Fact]
    public void Screening_answered_later_brings_stim_into_the_plan_when_it_is_drafted_anew()
    {
        Typed();
        _screens.Keys("Esc", "Esc");
        Assert.Null(Saved().Plan!.LaneOf(Lanes.Stim));
        _screens.Keys("S", "a", "y", "Ctrl+S");
        Assert.Contains("R in the grid drafts it anew", _screens.State<GridState>().Status, StringComparison.Ordinal);
        Assert.Null(_screens.State<GridState>().Plan.LaneOf(Lanes.Stim));
        _screens.Keys("R");
        Assert.NotNull(_screens.State<GridState>().Plan.LaneOf(Lanes.Stim));
        Assert.True(_screens.State<GridState>().IsUnsaved);
        _screens.Keys("u", "Ctrl+Y", "Ctrl+S");
        Assert.NotNull(Saved().Plan!.LaneOf(Lanes.Stim));
    }

    [Fact]
    public void The_data_of_a_case_are_changed_from_the_list_and_from_the_grid_each_time_as_a_new_revision()
    {
        Typed();
        _screens.Keys("Esc", "Esc", "i");
        Line("therapist", "CD");
        _screens.Keys("Ctrl+S");
        Assert.Equal(("CD", 2), (Saved().Case.Therapist, Saved().CaseStamp.Revision));
        Assert.Equal("CD", _screens.State<GridState>().Desk.Case.Therapist);
        _screens.Keys("q", "i");
        Line("other-knee", "sound");
        _screens.Keys("Ctrl+S");
        Assert.Equal((OtherKnee.Sound, 3), (Saved().Case.OtherKnee, Saved().CaseStamp.Revision));
        Assert.Contains("Saved. The plan stands", _screens.State<StartState>().Status, StringComparison.Ordinal);
        _screens.Keys("i", "F4", "n", "Ctrl+S");
        Assert.Single(Saved().Case.Screening.Answers);
    }

    [Fact]
    public void A_slip_in_the_day_of_the_operation_is_put_right_with_a_plan_for_the_right_day()
    {
        Typed();
        _screens.Keys("Esc", "Esc", "i");
        Line("operated", "2026-11-09");
        _screens.Keys("Ctrl+S");
        Assert.Equal((new DateOnly(2026, 11, 9), new DateOnly(2026, 11, 9)), (Saved().Case.Operation.Date, Saved().Plan!.Operation));
        Assert.False(_screens.State<GridState>().IsUnsaved);
        Assert.Equal(new DateOnly(2026, 11, 9), _screens.State<GridState>().Plan.Operation);
    }

    [Fact]
    public void Data_left_half_typed_wait_while_the_case_is_open()
    {
        Typed();
        _screens.Keys("Esc", "Esc", "i");
        Line("therapist", "CD");
        _screens.Keys("Esc", "i");
        Assert.Equal("CD", Line("therapist"));
        _screens.Keys("Esc", "S", "n", "Esc", "S");
        Assert.Single(_screens.State<ScreeningState>().Answers);
    }

    [Fact]
    public void A_new_case_half_typed_when_the_line_dropped_goes_on_at_the_next_start()
    {
        _screens.Keys("n");
        _screens.Lines("wren-01");
        _screens.Types("16 n");
        _screens.Keep();
        CountedScreens later = new(_temp.Open(_temp.Own));
        Assert.Equal("A new case was left half typed; n goes on with it.", later.State<StartState>().Status);
        later.Keys("n");
        Assert.Equal(("WREN-01", "16 n", "operated"), (later.State<IntakeState>().Form.TextOf("code"), later.State<IntakeState>().Form.TextOf("operated"), later.State<IntakeState>().Form.Current.Id));
        later.Keys("Ctrl+U");
        later.Lines("16 nov", "l");
        later.Keys("Ctrl+S");
        Assert.Equal(Side.Left, Saved().Case.Operation.Side);
        Assert.Equal("", new CountedScreens(_temp.Open(_temp.Own)).State<StartState>().Status);
    }

    [Fact]
    public void A_screening_and_readings_half_done_when_the_line_dropped_go_on_with_the_case()
    {
        Typed();
        _screens.Keys("y", "c");
        _screens.Types("Dr");
        _screens.Keep();
        CountedScreens later = new(_temp.Open(_temp.Own));
        later.Keys("Enter");
        Assert.Equal((1, "Dr"), (later.State<ScreeningState>().Answers.Count, later.State<ScreeningState>().Aside?.TextOf("by")));
        later.Keys("Esc", "a", "y", "Ctrl+S");
        later.Lines("95");
        later.Keep();
        CountedScreens again = new(_temp.Open(_temp.Own));
        again.Keys("Enter");
        Assert.Equal("95", again.State<AssessState>().Form.TextOf(MeasureIds.FlexionActive));
        again.Keys("Esc", "a");
        Assert.Equal("95", again.State<AssessState>().Form.TextOf(MeasureIds.FlexionActive));
    }

    [Fact]
    public void Data_and_answers_half_changed_when_the_line_dropped_are_offered_by_the_grid()
    {
        Typed();
        _screens.Keys("Esc", "Esc", "i");
        Line("therapist", "CD");
        _screens.Keep();
        _temp.Clock.Now = _temp.Clock.Now.AddMinutes(1);
        _screens.Keys("Esc", "S", "n");
        _screens.Keep();
        CountedScreens later = new(_temp.Open(_temp.Own));
        later.Keys("Enter");
        Assert.Equal(2, later.State<GridState>().Offers.Length);
        later.Keys("r");
        Assert.Single(later.State<ScreeningState>().Answers);
        later.Keys("Ctrl+S", "D", "r");
        Assert.Equal("CD", later.State<IntakeState>().Form.TextOf("therapist"));
        later.Keys("Ctrl+S", "q");
        Assert.Equal(("CD", 1), (Saved().Case.Therapist, Saved().Case.Screening.Answers.Count));
        Assert.False(_store.Drafts.Any);
    }

    [Fact]
    public void A_code_that_somebody_else_saved_meanwhile_is_refused_and_nothing_typed_is_lost()
    {
        _screens.Keys("n");
        new CountedScreens(_store).MakeCase();
        _screens.Lines("wren-01", "16 nov", "r", "");
        _screens.Keys("Ctrl+S");
        Assert.Contains("Not saved: ", _screens.State<IntakeState>().Status, StringComparison.Ordinal);
        Assert.Equal("right", Line("side"));
        Assert.Equal(Side.Left, Saved().Case.Operation.Side);
    }

    private OpenedCase Saved() => _store.Book.Open(CaseCode.Parse("WREN-01")!)!;

    private void Typed() => _screens.MakeCase();

    private string Line(string id) => _screens.State<IntakeState>().Form.TextOf(id);

    private void Line(string id, string text)
    {
        while (_screens.State<IntakeState>().Form.Current.Id != id)
        {
            _screens.Keys("Tab");
        }

        _screens.Keys("Ctrl+U");
        _screens.Lines(text);
    }
}
