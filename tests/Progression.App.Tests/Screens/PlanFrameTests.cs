using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Screens;
using Progression.App.Tests.Grid;
using Progression.App.Tests.Shell;
using Progression.Core.Plans;
using Terminal.Gui.Input;

namespace Progression.App.Tests.Screens;

[Collection("terminal library")]
public sealed class PlanFrameTests
{
    [Fact]
    public void Saving_makes_the_plan_the_saved_one()
    {
        PlanRevision? saved = null;
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        GridState state = PlanFrame.Perform(set, new SavePlan(set.Plan), Keeper(save: plan => { saved = plan; return null; }));
        Assert.Same(set.Plan, saved);
        Assert.False(state.IsUnsaved);
        Assert.Equal("Saved.", state.Status);
    }

    [Fact]
    public void A_save_that_fails_leaves_everything_unsaved_and_says_why()
    {
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        GridState state = PlanFrame.Perform(set, new SavePlan(set.Plan), Keeper(save: _ => "the disk is full."));
        Assert.True(state.IsUnsaved);
        Assert.Equal("Not saved: the disk is full.", state.Status);
    }

    [Fact]
    public void A_draft_that_cannot_be_kept_is_told()
    {
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        Assert.Equal("The draft could not be kept: no room.", PlanFrame.Perform(set, new KeepDraft(set.Plan), Keeper(keep: _ => "no room.")).Status);
    }

    [Fact]
    public void What_could_not_be_kept_is_not_left_without_a_word()
    {
        GridState set = Sample.Press(Sample.At(Sample.State, "bend", 3), "x");
        GridState failed = PlanFrame.Perform(set, new KeepDraft(set.Plan), Keeper(keep: _ => "no room."));
        Assert.Equal("The changes are not kept (no room.) Ctrl+S saves; Q leaves and loses them.", Sample.Press(failed, "q").Status);
        Assert.Empty(GridScreen.Definition.Press(failed, "q").Effects);
        Assert.IsType<LeaveScreen>(Assert.Single(GridScreen.Definition.Press(failed, "Q").Effects));
        Assert.Equal("Nothing would be lost: q leaves.", Sample.Press(set, "Q").Status);
        Assert.Null(PlanFrame.Perform(failed, new KeepDraft(set.Plan), Keeper()).DraftProblem);
    }

    [Fact]
    public void On_a_screen_a_cell_is_edited_by_keys_alone()
    {
        using HeadlessScreen<GridState> screen = new(GridScreen.Definition, Sample.At(Sample.State, "flexion", 3));
        screen.Keys(Key.Enter, Key.U.WithCtrl, new Key('9'), new Key('5'), Key.Enter);
        Assert.Contains("95 (78) *", screen.Text, StringComparison.Ordinal);
        Assert.IsType<KeepDraft>(Assert.Single(screen.Performed));
        screen.Keys(Key.Z.WithCtrl);
        Assert.Contains("90 (78)  │", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void On_a_screen_the_cursor_rests_on_its_cell_and_follows()
    {
        using HeadlessScreen<GridState> screen = new(GridScreen.Definition, Sample.At(Sample.State, "flexion", 2));
        Assert.Equal(new System.Drawing.Point(26, 4), screen.View.Cursor.Position);
        screen.Keys(Key.CursorRight);
        Assert.Equal(new System.Drawing.Point(37, 4), screen.View.Cursor.Position);
    }

    [Fact]
    public void Hostile_text_from_a_file_does_not_reach_the_terminal()
    {
        PlanRevision plan = PlanEdit.Set(Sample.Plan(), new(Lanes.Seen, 3), new SkillCell("x\u001b[2J\u202Ey"));
        using HeadlessScreen<GridState> screen = new(GridScreen.Definition, GridState.Open(Sample.Desk, plan));
        Assert.DoesNotContain('\u001b', screen.Text);
        Assert.DoesNotContain('\u202E', screen.Text);
        Assert.Contains("x\uFFFD[2J\uFFFDy", screen.Text, StringComparison.Ordinal);
    }

    private static PlanKeeper Keeper(Func<PlanRevision, string?>? save = null, Func<PlanRevision, string?>? keep = null) =>
        new() { Save = save ?? (_ => null), KeepDraft = keep ?? (_ => null), DropDraft = () => null };
}
