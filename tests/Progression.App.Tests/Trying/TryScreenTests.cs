using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Stores;
using Progression.App.Tests.Stores;
using Progression.App.Trying;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.App.Tests.Trying;

/// <summary>Trying readings on the demo's showcase, whose reassessment is due.</summary>
public sealed class TryScreenTests : IDisposable
{
    private readonly TempStore _temp = new();
    private readonly TryState _start;

    public TryScreenTests()
    {
        OpenStore store = _temp.Open(_temp.Demo);
        Assert.True(DemoStore.Prepare(store, fresh: false).Ready);
        _start = TryState.Open(OpenedPlan.Of(store, DemoStore.Showcase).Plan!.Start)!;
    }

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void The_readings_of_the_latest_assessment_stand_there_and_nothing_differs()
    {
        Assert.Equal(["flexion_active", "flexion_passive", "extension_active", "extension_passive"], _start.Form.Lines.Take(4).Select(line => line.Id));
        Assert.Equal("92", _start.Form.TextOf(MeasureIds.FlexionActive));
        Assert.Contains("No cell of the plan differs.", Text(_start), StringComparison.Ordinal);
        Assert.All(_start.Form.Lines, line => Assert.Null(_start.Wrong(line)));
    }

    [Fact]
    public void Grid_forecast_and_words_move_while_a_reading_is_typed()
    {
        TryState tried = Type(_start, MeasureIds.FlexionActive, "70");

        Assert.NotEqual(_start.Grid.Desk.Forecast(MeasureIds.FlexionActive).Forecast!.At(6).Median, tried.Grid.Desk.Forecast(MeasureIds.FlexionActive).Forecast!.At(6).Median);
        Assert.NotEqual(_start.Grid.Plan, tried.Grid.Plan);
        Assert.Contains("differ", Text(tried), StringComparison.Ordinal);
        Assert.Contains("was 92", Text(tried), StringComparison.Ordinal);
        // Typed on to another number it moves again, and back to what was measured it is as it was.
        Assert.Contains("No cell of the plan differs.", Text(Type(tried, MeasureIds.FlexionActive, "92")), StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_move_too()
    {
        TryState swollen = Type(_start, MeasureIds.Effusion, "3+");

        Assert.NotEqual(_start.Grid.Findings.Select(finding => finding.Text), swollen.Grid.Findings.Select(finding => finding.Text));
        Assert.Contains("->", Text(swollen).Split('\n').First(line => line.StartsWith("Ladder", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void Nonsense_leaves_the_grid_as_it_was_and_says_what_is_allowed()
    {
        TryState before = Type(_start, MeasureIds.FlexionActive, "9");
        TryState nonsense = TryScreen.Definition.Paste(before, "00");

        Assert.Same(before.Grid, nonsense.Grid);
        Assert.Contains("Not taken yet: a number, alone or with deg, from 0 to 160 deg", Text(nonsense), StringComparison.Ordinal);
        Assert.NotNull(Press(nonsense, "Enter").Form.Problem);
    }

    [Fact]
    public void An_empty_line_is_not_measured_and_never_zero()
    {
        TryState without = Type(_start, MeasureIds.ExtensionPassive, "");

        Assert.Null(without.Grid.Desk.Case.Assessments[^1].Value(MeasureIds.ExtensionPassive));
    }

    [Fact]
    public void Several_readings_are_tried_together_and_reset_at_once()
    {
        TryState two = Type(Type(_start, MeasureIds.FlexionActive, "70"), MeasureIds.PainActivity, "9");

        Assert.Equal((70, 9), (two.Grid.Desk.Case.Assessments[^1].Value(MeasureIds.FlexionActive), two.Grid.Desk.Case.Assessments[^1].Value(MeasureIds.PainActivity)));
        TryState reset = Press(two, "Ctrl+R");
        Assert.Equal("92", reset.Form.TextOf(MeasureIds.FlexionActive));
        Assert.Same(_start.Grid, reset.Grid);
    }

    [Fact]
    public void A_dose_changed_by_hand_stays_when_a_reading_is_changed_after_it()
    {
        CellAddress bend = new("bend", 6);
        TryState dosed = _start.WithDoses(PlanEdit.Set(_start.Grid.Plan, bend, null));
        TryState tried = Type(dosed, MeasureIds.FlexionActive, "70");

        Assert.True(tried.Grid.Plan.At(bend)!.IsPinned);
        Assert.Null(tried.Grid.Plan.At(bend)!.Content);
    }

    [Fact]
    public void Leaving_asks_for_nothing_to_be_kept() =>
        Assert.Equal([new LeaveScreen()], TryScreen.Definition.Press(Type(_start, MeasureIds.FlexionActive, "70"), "Esc").Effects);

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    [InlineData(200, 50)]
    public void Every_row_fits_and_the_caret_stands_in_the_field(int width, int height)
    {
        Picture picture = TryPicture.Draw(Type(_start, MeasureIds.FlexionActive, "70"), new(width, height));

        Assert.Equal(height, picture.Rows.Length);
        Assert.All(picture.Rows, row => Assert.True(row.Width <= width, row.Text));
        Assert.Contains("Flexion, active", picture.Rows[picture.Caret!.Row].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_lists_the_keys_and_closes() =>
        Assert.Equal(TryMode.Readings, Press(Press(_start, "F1"), "Esc").Mode);

    private static string Text(TryState state) => TryPicture.Draw(state, PictureSize.Smallest).Text;

    private static TryState Press(TryState state, string key) => TryScreen.Definition.Press(state, key).State;

    private static TryState Type(TryState state, string measure, string text) =>
        TryScreen.Definition.Paste(Press(state with { Form = state.Form.To(measure) }, "Ctrl+U"), text);
}
