using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Plans;

public sealed class PlanEditTests
{
    private static readonly PlanRevision Plan = Grid.Empty(weeks: 3, from: 8).Put("stim", 2, "high 15x2 daily");

    private static readonly CellAddress Stim = new("stim", 2);

    private static readonly CellAddress Bare = new("walking", 2);

    [Fact]
    public void Setting_a_cell_pins_it_and_keeps_what_the_draft_would_put()
    {
        PlanRevision set = PlanEdit.Set(Plan, Stim, Grid.Read(Plan, "stim", "low 15x1 mon"), "travels");

        Assert.Equal("low 15x1 mon", set.Text("stim", 2));
        Assert.Equal(new Pin(Plan.ContentAt("stim", 2), "travels"), set.At(Stim)!.Pin);
        Assert.Equal("high 15x2 daily", Plan.Text("stim", 2));
    }

    [Fact]
    public void Setting_it_again_still_remembers_the_draft()
    {
        PlanRevision twice = PlanEdit.Set(PlanEdit.Set(Plan, Stim, null), Stim, Grid.Read(Plan, "stim", "low 15x1 mon"));

        Assert.Equal("high 15x2 daily", PlanEdit.Unpin(twice, Stim).Text("stim", 2));
        Assert.False(PlanEdit.Unpin(twice, Stim).At(Stim)!.IsPinned);
    }

    [Fact]
    public void An_empty_cell_set_by_hand_goes_back_to_empty()
    {
        PlanRevision set = PlanEdit.Set(Plan, Bare, Grid.Read(Plan, "walking", "walk-with-aid 5 min"));

        Assert.Equal("PLAN-BY-HAND", set.At(Bare)!.Basis.Rule);
        Assert.Null(PlanEdit.Unpin(set, Bare).ContentAt("walking", 2));
    }

    [Fact]
    public void What_is_not_pinned_is_left_alone()
    {
        Assert.Same(Plan, PlanEdit.Unpin(Plan, Stim));
        Assert.Same(Plan, PlanEdit.Unpin(Plan, Bare));
        Assert.Same(Plan, PlanEdit.WithReason(Plan, Stim, "none"));
        Assert.Equal("late", PlanEdit.WithReason(PlanEdit.Set(Plan, Stim, null), Stim, "late").At(Stim)!.Pin!.Reason);
    }

    [Theory] // The plan starts on day 8, in week 2, and has 3 weeks.
    [InlineData("stim", 0, "The plan has weeks 1 to 3.")]
    [InlineData("stim", 4, "The plan has weeks 1 to 3.")]
    [InlineData("stim", 1, "Week 1 lies before the plan's first day that can be changed: what is done is done.")]
    [InlineData("pairing", 2, "This lane is computed from the others.")]
    [InlineData("no-lane", 2, "The plan has no lane \"no-lane\".")]
    [InlineData("stim", 2, null)]
    [InlineData("stim", 3, null)]
    public void Says_why_a_cell_cannot_be_edited(string lane, int week, string? whyNot)
    {
        CellAddress address = new(lane, week);

        Assert.Equal(whyNot, PlanEdit.WhyNot(Plan, address));
        if (whyNot is not null)
        {
            Assert.Throws<ArgumentException>(() => PlanEdit.Set(Plan, address, null));
        }
    }

    [Fact]
    public void A_cure_is_taken_whole_and_says_so()
    {
        Cure cure = new("Walk and rest", [new CellChange(Stim, null), new CellChange(Bare, Grid.Read(Plan, "walking", "walk-with-aid 5 min"))]);

        PlanRevision cured = PlanEdit.Apply(Plan, cure);

        Assert.Equal(("", "walk-with-aid 5 min"), (cured.Text("stim", 2), cured.Text("walking", 2)));
        Assert.Equal("Cure taken: Walk and rest", cured.At(Bare)!.Pin!.Reason);
    }
}
