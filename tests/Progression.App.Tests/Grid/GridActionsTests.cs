using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Screens;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class GridActionsTests
{
    public static TheoryData<GridMode> Modes => [.. Enum.GetValues<GridMode>()];

    [Theory]
    [MemberData(nameof(Modes))]
    public void Help_and_a_way_out_are_always_there(GridMode mode)
    {
        List<ScreenAction<GridState>> rows = [.. GridActions.Table.All.Where(action => action.Mode == mode.ToString())];
        Assert.Contains(rows, action => action.Keys.Contains("F1") && action.HintRank == 1);
        Assert.Contains(rows, action => action.Keys.Contains("Esc") || action.Keys.Contains("q"));
    }

    [Fact]
    public void Every_action_has_a_line_of_help_that_fits_the_smallest_window() => Assert.All(GridActions.Table.All, action =>
    {
        Assert.NotEmpty(action.Help);
        Assert.InRange(action.Help.Length, 1, 80 - 26);
        Assert.True(string.Join(", ", action.Keys).Length <= 23, action.Id);
    });

    [Theory]
    [MemberData(nameof(Modes))]
    public void Four_to_six_hints_fit_the_smallest_window(GridMode mode)
    {
        GridState state = mode switch
        {
            GridMode.Edit => Sample.Press(Sample.At(Sample.State, "bend", 3), "Enter"),
            GridMode.Reason => Sample.Press(Sample.At(Sample.State, "quads-strength", 3), "x"),
            GridMode.Fill => Sample.Press(Sample.At(Sample.State, "bend", 3), "F"),
            GridMode.Days => Sample.Press(Sample.State, "d"),
            GridMode.Findings => Sample.Press(Sample.State, "f"),
            GridMode.Why => Sample.Press(Sample.State, "w"),
            GridMode.Help => Sample.Press(Sample.State, "?"),
            GridMode.Draft => GridDraftsTests.Asked(),
            GridMode.Compare => Sample.Press(GridDraftsTests.Asked(), "c"),
            GridMode.Review => Sample.Press(SampleReview.Asked(SampleReview.Sue), "o"),
            GridMode.Comment => Sample.Press(SampleReview.Asked(SampleReview.Sue), "C"),
            GridMode.Remark => Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "c"),
            GridMode.Return => Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "r"),
            GridMode.Ask => Sample.Press(SampleReview.Saved(SampleReview.Anna), "o", "a"),
            GridMode.Sign => Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "s"),
            GridMode.Confirm => Sample.Press(SampleReview.Asked(SampleReview.Sue), "o", "s", "Enter"),
            GridMode.Conflict => SampleReview.Conflicted(),
            _ => Sample.State,
        };
        Assert.Equal(mode, state.Mode);
        Assert.InRange(GridActions.Table.Hints(state).Count, 4, 6);
        Assert.EndsWith(GridActions.Table.Hints(state)[^1].Hint, GridActions.Table.HintLine(state, 80), StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_of_findings_on_no_cell_still_has_its_hints()
    {
        GridState clean = GridState.Open(Sample.Desk with { Check = _ => [] }, Sample.Plan());
        Assert.InRange(GridActions.Table.Hints(Sample.Press(clean, "f")).Count, 4, 6);
    }

    [Fact]
    public void Letters_and_arrows_move_alike()
    {
        GridState state = Sample.At(Sample.State, "stim", 3);
        Assert.Equal(Sample.Press(state, "Left", "Down").Cursor, Sample.Press(state, "h", "j").Cursor);
        Assert.Equal(Sample.Press(state, "Right", "Up").Cursor, Sample.Press(state, "l", "k").Cursor);
    }

    [Fact]
    public void The_cursor_stops_at_every_edge()
    {
        GridState first = Sample.Press(Sample.State, "Home", "g", "Left", "Up");
        Assert.Equal((0, 1), (first.LaneIndex, first.Week));
        GridState last = Sample.Press(Sample.State, "End", "G", "Right", "Down");
        Assert.Equal((17, 6), (last.LaneIndex, last.Week));
    }

    [Fact]
    public void Pages_go_by_band()
    {
        GridState state = Sample.Press(Sample.State, "g", "PgDn");
        Assert.Equal(Lanes.Stim, state.Lane.Id);
        Assert.Equal(Lanes.WithStim, Sample.Press(state, "PgDn").Lane.Id);
        Assert.Equal(Lanes.Pairing, Sample.Press(state, "PgDn", "PgDn").Lane.Id);
        Assert.Equal(Lanes.Stim, Sample.Press(Sample.At(state, "bend", 3), "PgUp", "PgUp").Lane.Id);
    }

    [Fact]
    public void Opens_on_the_present_week() => Assert.Equal(3, Sample.State.Week);

    [Fact]
    public void Quitting_asks_nothing_and_tells_what_is_kept()
    {
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        Step<GridState> step = GridScreen.Definition.Press(set, "q");
        Assert.Equal([new LeaveScreen()], step.Effects);
        Assert.Equal("The unsaved changes to K-014 are kept as a draft; opening the plan again offers them.", PlanFrame.Farewell(step.State));
        Assert.Null(PlanFrame.Farewell(Sample.State));
    }

    [Fact]
    public void Saving_is_offered_only_when_something_is_unsaved()
    {
        Assert.Equal("Everything is saved.", Sample.Press(Sample.State, "Ctrl+S").Status);
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        Assert.Equal([new SavePlan(set.Plan)], GridScreen.Definition.Press(set, "Ctrl+S").Effects);
    }

    [Fact]
    public void Help_returns_to_where_it_was_called()
    {
        GridState editing = Sample.Press(Sample.At(Sample.State, "bend", 3), "Enter", "F1");
        Assert.Equal(GridMode.Help, editing.Mode);
        GridState back = Sample.Press(editing, "Esc");
        Assert.Equal(GridMode.Edit, back.Mode);
        Assert.NotNull(back.Entry);
    }
}
