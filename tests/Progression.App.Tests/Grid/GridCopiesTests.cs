using Progression.App.Grid;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class GridCopiesTests
{
    [Fact]
    public void A_copied_cell_is_put_into_another_of_its_kind()
    {
        GridState copied = Sample.Press(Sample.At(Sample.State, "bend", 3), "y");
        Assert.Equal("Copied Bend, week 3: heel-slide 3x11 2/day. Y puts it into another cell.", copied.Status);
        Assert.Equal("put copy", GridActions.Table.Hints(Sample.At(copied, "bend", 5)).Single(row => row.Id == "put").Hint);
        GridState put = Sample.Press(Sample.At(copied, "bend", 5), "Y");
        Assert.Equal(copied.Plan.ContentAt("bend", 3), put.Plan.ContentAt("bend", 5));
        Assert.Equal("Bend, week 5 set to heel-slide 3x11 2/day.", put.Status);
        Assert.Equal("heel-slide 3x11 2/day", Text(Sample.Press(Sample.At(put, "walking", 4), "Ctrl+V"), "walking", 4));
    }

    [Fact]
    public void A_goal_is_not_put_into_the_lane_of_another_measure_and_nothing_is_put_before_a_copy()
    {
        Assert.Equal("Nothing was copied yet: y copies a cell.", Sample.Press(Sample.At(Sample.State, "flexion", 3), "Y").Status);
        GridState copied = Sample.Press(Sample.At(Sample.State, "flexion", 3), "Ctrl+C");
        Assert.Equal("What was copied belongs to Flexion.", Sample.Press(Sample.At(copied, "extension", 4), "Y").Status);
        Assert.Equal("The cell is empty: there is nothing to copy.", Sample.Press(Sample.At(Sample.State, "calf", 3), "y").Status);
        Assert.Equal("This lane is computed from the others.", Sample.Press(Sample.At(Sample.State, "pairing", 3), "y").Status);
    }

    [Fact]
    public void A_cell_goes_on_into_the_next_week_and_the_cursor_with_it()
    {
        GridState state = Sample.Press(Sample.At(Sample.State, "bend", 3), ">");
        Assert.Equal(new CellAddress("bend", 4), state.Cursor);
        Assert.Equal("Bend of week 3 copied to week 4.", state.Status);
        state = Sample.Press(state, ">", ">");
        Assert.Equal("heel-slide 3x11 2/day", Text(state, "bend", 6));
        Assert.Equal("This is the plan's last week.", Sample.Press(state, ">").Status);
        GridState pinned = Sample.Press(Sample.At(Sample.State, "bend", 4), "P");
        GridState left = Sample.Press(Sample.At(pinned, "bend", 3), ">");
        Assert.Equal(("Nothing was copied; week 4 is pinned and was left.", 3, 1), (left.Status, left.Week, left.Done.Count()));
    }

    [Fact]
    public void Filling_on_leaves_what_is_pinned_says_so_and_is_undone_as_one()
    {
        GridState pinned = Sample.Press(Sample.At(Sample.State, "bend", 5), "P");
        GridState filled = Sample.Press(Sample.At(pinned, "bend", 3), "F", "Enter");
        Assert.Equal("Bend of week 3 copied to weeks 4 and 6; week 5 is pinned and was left.", filled.Status);
        Assert.Equal(("heel-slide 3x13 2/day", "heel-slide 3x11 2/day"), (Text(filled, "bend", 5), Text(filled, "bend", 6)));
        GridState undone = Sample.Press(filled, "u");
        Assert.Same(pinned.Plan, undone.Plan);
        Assert.StartsWith("Undid: Bend of week 3 copied to weeks 4 and 6", undone.Status, StringComparison.Ordinal);
        Assert.Equal("heel-slide 3x11 2/day", Text(Sample.Press(undone, "Ctrl+Y"), "bend", 4));
    }

    [Fact]
    public void Filling_takes_a_number_of_weeks_and_refuses_more_than_there_are()
    {
        GridState asked = Sample.Press(Sample.At(Sample.State, "bend", 3), "F");
        Assert.Equal(GridMode.Fill, asked.Mode);
        GridState refused = Sample.Press(Sample.Type(asked, "4"), "Enter");
        Assert.Equal(("1 to 3 weeks; nothing for all of them", GridMode.Fill), (refused.Entry!.Problem!.Allowed, refused.Mode));
        GridState filled = Sample.Press(Sample.Type(refused, "1"), "Enter");
        Assert.Equal("Bend of week 3 copied to week 4.", filled.Status);
        Assert.Equal("heel-slide 3x13 2/day", Text(filled, "bend", 5));
        Assert.False(Sample.Press(asked, "Esc").IsUnsaved);
    }

    [Fact]
    public void What_stands_there_already_is_no_change() =>
        Assert.Equal("Nothing changed: the same stands there already.", Sample.Press(Sample.At(Sample.State, "quads-strength", 4), "F", "Enter").Status);

    [Fact]
    public void A_week_goes_on_with_its_stim_and_work_but_not_its_goals()
    {
        GridState pinned = Sample.Press(Sample.At(Sample.State, "walking", 5), "P");
        GridState state = Sample.Press(Sample.At(pinned, "flexion", 3), "N");
        Assert.Equal("Work of week 3 copied to weeks 4 to 6; Walking and stairs of week 5 is pinned and was left.", state.Status);
        Assert.Equal(("high 15x2 daily", "heel-slide 3x11 2/day", "walk 25 min 2/day"), (Text(state, "stim", 6), Text(state, "bend", 6), Text(state, "walking", 5)));
        Assert.Equal("100 deg", Text(state, "flexion", 4));
        Assert.Same(pinned.Plan, Sample.Press(state, "u").Plan);
        GridState next = Sample.Press(Sample.At(Sample.State, "flexion", 3), "n");
        Assert.Equal(("Work of week 3 copied to week 4.", "heel-slide 3x13 2/day"), (next.Status, Text(next, "bend", 5)));
    }

    [Fact]
    public void A_copy_into_weeks_that_are_done_is_left()
    {
        GridState open = GridState.Open(Sample.Desk, Sample.Plan() with { OpenFrom = new DateOnly(2026, 11, 23) });
        GridState state = Sample.Press(Sample.At(open, "bend", 2), "F", "Enter");
        Assert.Equal("Bend of week 2 copied to weeks 4 to 6; week 3 is done and was left.", state.Status);
    }

    [Fact]
    public void A_copy_against_a_safety_rule_asks_for_a_reason_that_every_cell_gets()
    {
        GridState bare = GridState.Open(Sample.Desk, Without(Sample.Plan(), 6));
        GridState asked = Sample.Press(Sample.At(bare, "stim", 3), "F", "Enter");
        Assert.Equal(GridMode.Reason, asked.Mode);
        Assert.False(asked.IsUnsaved);
        Assert.Contains("Stim of week 3 copied to weeks 4 to 6: why is it right?", Text(asked), StringComparison.Ordinal);
        GridState given = Sample.Press(Sample.Type(asked, "team decision"), "Enter");
        Assert.All(Enumerable.Range(4, 3), week => Assert.Equal("team decision", given.Plan.At(new(Lanes.Stim, week))!.Pin!.Reason));
        Assert.Same(bare.Plan, Sample.Press(given, "u").Plan);
        Assert.Same(bare.Plan, Sample.Press(asked, "Esc").Plan);
    }

    [Fact]
    public void A_cell_is_pinned_as_it_is_and_given_back()
    {
        GridState pinned = Sample.Press(Sample.At(Sample.State, "bend", 3), "P");
        Assert.Equal("Bend, week 3 pinned as heel-slide 3x11 2/day.", pinned.Status);
        Assert.True(pinned.Plan.At(pinned.Cursor)!.IsPinned);
        Assert.Equal("The cell is pinned already.", Sample.Press(pinned, "P").Status);
        Assert.False(Sample.Press(pinned, "p").Plan.At(pinned.Cursor)!.IsPinned);
        Assert.Equal("Week 1 lies before the plan's first day that can be changed: what is done is done.", Sample.Press(Sample.At(Sample.State, "bend", 1), "P").Status);
    }

    private static PlanRevision Without(PlanRevision plan, int week) => plan.With(new("quads-strength", week), plan.At(new("quads-strength", week))! with { Content = null });

    private static string Text(GridState state, string lane, int week) => CellNotation.Text(state.Plan.LaneOf(lane)!, state.Plan.ContentAt(lane, week), state.Desk.Library);

    private static string Text(GridState state) => string.Join(' ', GridPictureTests.Draw(state, 200, 60).Text.Split('\n', StringSplitOptions.TrimEntries));
}
