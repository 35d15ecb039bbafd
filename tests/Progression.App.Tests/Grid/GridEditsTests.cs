using Progression.App.Actions;
using Progression.App.Grid;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

public sealed class GridEditsTests
{
    [Fact]
    public void The_editor_opens_with_the_present_content_and_the_caret_behind_it()
    {
        GridState state = Sample.Press(Sample.At(Sample.State, "bend", 3), "Enter");
        Assert.Equal("heel-slide 3x11 2/day", state.Entry!.Line.Text);
        Assert.Equal(21, state.Entry.Line.Caret);
    }

    [Fact]
    public void An_edit_pins_the_cell_checks_the_plan_again_and_keeps_a_draft()
    {
        GridState typed = Sample.Type(Sample.Press(Sample.At(Sample.State, "walking", 3), "Enter"), "walk 25 min");
        Step<GridState> step = GridScreen.Definition.Press(typed, "Enter");
        Assert.True(step.State.Plan.At(new("walking", 3))!.IsPinned);
        Assert.Contains(step.State.Findings, finding => finding.Rule == "LOAD-02" && finding.Cells.Contains(new("walking", 3)));
        Assert.Equal(new KeepDraft(step.State.Plan), Assert.Single(step.Effects));
        Assert.Equal("Walking and stairs, week 3 set to walk 25 min.", step.State.Status);
        Assert.Equal(GridMode.Grid, step.State.Mode);
    }

    [Fact]
    public void Wrong_input_is_refused_on_the_spot_with_what_is_allowed_and_the_caret_stays()
    {
        GridState state = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 3), "Enter"), "900"), "Enter");
        Assert.Equal(GridMode.Edit, state.Mode);
        Assert.Equal("900", state.Entry!.Line.Text);
        Assert.Equal("a number from 0 to 160 deg", state.Entry.Problem!.Allowed);
        Assert.Equal("900", state.Entry.Problem.Found);
        Assert.False(state.IsUnsaved);
    }

    [Fact]
    public void Esc_leaves_the_cell_as_it_was()
    {
        GridState state = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 3), "Enter"), "100"), "Esc");
        Assert.Equal(GridMode.Grid, state.Mode);
        Assert.False(state.IsUnsaved);
        Assert.Equal("Left as it was.", state.Status);
    }

    [Fact]
    public void Typing_the_same_again_changes_nothing()
    {
        GridState state = Sample.Press(Sample.At(Sample.State, "bend", 3), "Enter", "Enter");
        Assert.False(state.IsUnsaved);
        Assert.Equal("Nothing changed.", state.Status);
    }

    [Fact]
    public void An_edit_against_a_safety_rule_asks_for_a_reason_and_does_not_go_without_one()
    {
        GridState asked = Sample.Press(Sample.At(Sample.State, "quads-strength", 3), "x");
        Assert.Equal(GridMode.Reason, asked.Mode);
        Assert.Contains("stim and no voluntary quadriceps work", asked.Entry!.Proposed!.Against, StringComparison.Ordinal);
        Assert.False(asked.IsUnsaved);
        GridState refused = Sample.Press(asked, "Space", "Enter");
        Assert.Equal(GridMode.Reason, refused.Mode);
        Assert.NotNull(refused.Entry!.Problem);
        GridState given = Sample.Press(Sample.Type(asked, "rest after a fall"), "Enter");
        Assert.Equal("rest after a fall", given.Plan.At(new("quads-strength", 3))!.Pin!.Reason);
        Assert.Null(given.Plan.At(new("quads-strength", 3))!.Content);
    }

    [Fact]
    public void Leaving_the_reason_leaves_the_cell_as_it_was()
    {
        GridState state = Sample.Press(Sample.At(Sample.State, "quads-strength", 3), "x", "Esc");
        Assert.False(state.IsUnsaved);
        Assert.NotNull(state.Plan.At(new("quads-strength", 3))!.Content);
    }

    [Fact]
    public void Unpinning_gives_the_cell_back_to_the_draft()
    {
        GridState set = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 3), "Enter"), "95"), "Enter");
        GridState state = Sample.Press(set, "p");
        Assert.Equal(new TargetCell(90), state.Plan.ContentAt("flexion", 3));
        Assert.False(state.Plan.At(new("flexion", 3))!.IsPinned);
        Assert.Equal("The cell is not pinned.", Sample.Press(state, "p").Status);
    }

    [Fact]
    public void Undo_is_unlimited_named_and_brings_back_the_saved_plan_itself()
    {
        GridState state = Sample.State;
        for (int week = 2; week <= 6; week++)
        {
            state = Sample.Press(Sample.Type(Sample.Press(Sample.At(state, "flexion", week), "Enter"), "77"), "Enter");
        }
        Assert.Equal(5, state.Done.Count());
        state = Sample.Press(state, "u");
        Assert.Equal("Undid: Flexion, week 6 set to 77 deg.", state.Status);
        Assert.Equal("Redid: Flexion, week 6 set to 77 deg.", Sample.Press(state, "Ctrl+Y").Status);
        state = Sample.Press(state, "u", "Ctrl+Z", "u", "u");
        Assert.Same(state.Saved, state.Plan);
        Assert.False(state.IsUnsaved);
        Assert.Equal("There is nothing to undo.", Sample.Press(state, "u").Status);
    }

    [Fact]
    public void Undoing_to_the_saved_plan_drops_the_draft()
    {
        GridState set = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 3), "Enter"), "95"), "Enter");
        Assert.Equal(new DropDraft(), Assert.Single(GridScreen.Definition.Press(set, "u").Effects));
    }

    [Fact]
    public void A_new_change_ends_what_could_be_redone()
    {
        GridState set = Sample.Press(Sample.Type(Sample.Press(Sample.At(Sample.State, "flexion", 3), "Enter"), "95"), "Enter");
        GridState other = Sample.Press(Sample.Type(Sample.Press(Sample.Press(set, "u"), "Enter"), "99"), "Enter");
        Assert.Equal("There is nothing to redo.", Sample.Press(other, "Ctrl+Y").Status);
    }

    [Theory]
    [InlineData("pairing", 3, "This lane is computed from the others.")]
    [InlineData("flexion", 1, "Week 1 lies before the plan's first day that can be changed: what is done is done.")]
    public void A_cell_that_cannot_be_edited_says_why(string lane, int week, string reason)
    {
        GridState state = Sample.Press(Sample.At(Sample.State, lane, week), "Enter");
        Assert.Equal(reason, state.Status);
        Assert.Equal(GridMode.Grid, state.Mode);
    }
}
