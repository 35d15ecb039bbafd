using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.App.Screens;
using Progression.App.Shell;
using Progression.App.Tests.Pictures;
using Progression.App.Tests.Shell;
using Progression.Core.Plans;

namespace Progression.App.Tests.Grid;

[Collection("terminal library")]
public sealed class GridDraftsTests
{
    private static readonly PlanRevision Saved = Sample.Plan();
    private static readonly PlanRevision Kept = PlanEdit.Set(PlanEdit.Set(Saved, new("flexion", 4), new TargetCell(77)), new("bend", 5), null);

    /// <summary>The question about a draft of two cells and a form of two lines after it.</summary>
    internal static GridState Asked() => GridState.Open(Sample.Desk, Saved,
        new DraftOffer("one", "changes to the plan", "Kept today at 09:00, by anna in a session that has ended.") { Plan = Kept, From = Saved },
        new DraftOffer("two", "an assessment", "Kept on 2026-11-17 at 16:20, by anna in a session that has ended.")
        {
            Lines = [new("Flexion, active", "", "95"), new("Who measured", "anna", "")],
        });

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 60)]
    public void The_pages_look_as_reviewed(int width, int height)
    {
        Snapshot.Match(GridPictureTests.Draw(Asked(), width, height).Text, $"draft-{width}x{height}");
        Snapshot.Match(GridPictureTests.Draw(Sample.Press(Conflicting(), "c"), width, height).Text, $"draft-compare-{width}x{height}");
        Snapshot.Match(GridPictureTests.Draw(Sample.Press(Asked(), "x", "c"), width, height).Text, $"draft-form-{width}x{height}");
    }

    [Fact]
    public void The_pages_fit_windows_of_all_kinds()
    {
        AnySize.Fits(size => GridPictureTests.Draw(Asked(), size.Width, size.Height));
        AnySize.Fits(size => GridPictureTests.Draw(Sample.Press(Conflicting(), "c"), size.Width, size.Height));
    }

    [Theory]
    [InlineData(TerminalColours.Sixteen)]
    [InlineData(TerminalColours.None)]
    public void On_a_screen_the_chosen_line_is_told_apart_with_and_without_colour(TerminalColours colours)
    {
        using HeadlessScreen<GridState> screen = new(GridScreen.Definition, Sample.Press(Conflicting(), "c"), look: new(colours, SevenBitOnly: colours == TerminalColours.None));
        Assert.Equal(InkColours.Of(Ink.Chosen, colours), screen.At(0, 2).Attribute);
        Assert.Equal(InkColours.Of(Ink.Plain, colours), screen.At(0, 3).Attribute);
        Assert.NotEqual(InkColours.Of(Ink.Chosen, colours), InkColours.Of(Ink.Plain, colours));
        using HeadlessScreen<GridState> days = new(GridScreen.Definition, Sample.Press(Sample.State, "d"), look: new(colours, SevenBitOnly: colours == TerminalColours.None));
        // Wednesday the 18th is today: its column is bold, and says now.
        Assert.Contains(colours == TerminalColours.None ? "V now" : "▼ now", days.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recovered_plan_is_a_change_that_can_be_undone_and_the_next_is_asked_about()
    {
        Step<GridState> step = GridScreen.Definition.Press(Asked(), "r");
        Assert.Same(Kept, step.State.Plan);
        Assert.Equal([new KeepDraft(Kept), new ForgetDraft("one")], step.Effects);
        Assert.Equal((GridMode.Draft, "Kept draft recovered, 2 cells."), (step.State.Mode, step.State.Status));
        Assert.Equal("two", Assert.Single(step.State.Offers).Id);
        Step<GridState> form = GridScreen.Definition.Press(step.State, "r");
        Assert.Equal([new OpenKeptForm("two")], form.Effects);
        Assert.Equal(GridMode.Grid, form.State.Mode);
        Assert.Same(form.State.Saved, Sample.Press(form.State, "u").Plan);
    }

    [Fact]
    public void A_dropped_draft_is_gone_and_one_left_for_later_waits()
    {
        Step<GridState> dropped = GridScreen.Definition.Press(Asked(), "x");
        Assert.Equal([new ForgetDraft("one")], dropped.Effects);
        Assert.False(dropped.State.IsUnsaved);
        GridState later = Sample.Press(Asked(), "Esc");
        Assert.Equal((GridMode.Grid, 2, "2 drafts wait: D asks again."), (later.Mode, later.Offers.Length, later.Status));
        Assert.Equal("2 drafts of K-014 are still kept.", PlanFrame.Farewell(later));
        Assert.Equal(GridMode.Draft, Sample.Press(later, "D").Mode);
        Assert.Equal("No draft of an earlier session waits.", Sample.Press(Sample.State, "D").Status);
    }

    [Fact]
    public void What_was_changed_on_both_sides_is_chosen_by_the_person()
    {
        GridState asked = Conflicting();
        GridState refused = Sample.Press(asked, "r");
        Assert.Equal("1 cell was changed on both sides: c compares, Space chooses for each.", refused.Status);
        GridState compared = Sample.Press(asked, "c");
        Assert.Null(GridDrafts.IsTaken(compared, GridDrafts.Cells(compared)[0]));
        GridState taken = Sample.Press(compared, "Space", "r");
        Assert.Equal((new TargetCell(77), null), ((TargetCell?)taken.Plan.ContentAt("flexion", 4), taken.Plan.ContentAt("bend", 5)));
        Assert.Equal(new TargetCell(66), taken.Plan.ContentAt("flexion", 6));
        GridState left = Sample.Press(compared, "Space", "Space", "r");
        Assert.Equal((new TargetCell(88), null), ((TargetCell?)left.Plan.ContentAt("flexion", 4), left.Plan.ContentAt("bend", 5)));
        Assert.Equal("Kept draft recovered, 1 cell.", left.Status);
    }

    [Fact]
    public void A_cell_of_a_week_that_is_done_by_now_is_shown_and_not_taken()
    {
        PlanRevision now = Saved with { OpenFrom = new DateOnly(2026, 11, 30) };
        GridState asked = GridState.Open(Sample.Desk, now, new DraftOffer("one", "changes to the plan", "Kept.") { Plan = Kept, From = Saved, Since = "Since." });
        GridState compared = Sample.Press(asked, "c");
        Assert.Equal([MergeStanding.Closed, MergeStanding.Clean], GridDrafts.Cells(compared).Select(cell => cell.Standing));
        Assert.StartsWith("Week 4 lies before", Sample.Press(compared, "Space").Status, StringComparison.Ordinal);
        GridState recovered = Sample.Press(compared, "r");
        Assert.Equal((new TargetCell(100), null), ((TargetCell?)recovered.Plan.ContentAt("flexion", 4), recovered.Plan.ContentAt("bend", 5)));
    }

    [Fact]
    public void A_draft_that_could_not_be_kept_again_is_not_forgotten()
    {
        bool forgotten = false;
        PlanKeeper keeper = new()
        {
            Save = _ => null,
            KeepDraft = _ => "no room.",
            DropDraft = () => null,
            Forget = _ =>
            {
                forgotten = true;
                return null;
            },
        };
        Step<GridState> step = GridScreen.Definition.Press(Asked(), "r");
        step.Effects.Aggregate(step.State, (state, effect) => PlanFrame.Perform(state, effect, keeper));
        Assert.False(forgotten);
    }

    // Week 4's flexion was set to 77 in the draft and to 88 by somebody who saved since; week 6's only there.
    private static GridState Conflicting()
    {
        PlanRevision now = PlanEdit.Set(PlanEdit.Set(Saved, new("flexion", 4), new TargetCell(88)), new("flexion", 6), new TargetCell(66));
        return GridState.Open(Sample.Desk, now, new DraftOffer("one", "changes to the plan", "Kept today at 09:00, by anna in a session that has ended.")
        {
            Plan = Kept,
            From = Saved,
            Since = "It was made from revision 1; revision 2 by ben has been saved since and stays.",
        });
    }
}
