using Progression.Core.Drafting;
using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Drafting;

/// <summary>A fresh draft over the plan that stands: what is done and what is pinned stays.</summary>
public sealed class RedraftTests
{
    private static readonly Knee First = Knee.Well.Stimulated(2, strong: true).Seen(8, Look.Well);

    // On day 15 the ladder steps down to reduced.
    private static readonly Knee Second = First.Seen(15, Look.Well);

    [Fact]
    public void Past_weeks_stay_as_they_were_and_the_coming_ones_are_fresh()
    {
        PlanRevision standing = First.Draft();

        PlanRevision next = Redraft.Over(standing, Second.Draft());

        Assert.Equal("high 15x2 daily", standing.Text("stim", 3));
        Assert.Equal(("high 15x2 daily", "reduced 15x1 daily"), (next.Text("stim", 2), next.Text("stim", 3)));
        Assert.All(standing.Cells.Where(pair => pair.Key.Week == 2), pair => Assert.Same(pair.Value, next.At(pair.Key)));
        Assert.Equal(standing.From, next.From);
    }

    [Fact] // Heel raises grow by two repetitions a week; a fresh draft alone would start them again.
    public void An_exercise_goes_on_where_the_standing_plan_had_got_to()
    {
        PlanRevision standing = First.Draft();

        PlanRevision next = Redraft.Of(standing, Second.Case, Knee.Library).Value!;

        Assert.Equal(["heel-raise 2x10", "heel-raise 2x12", "heel-raise 2x14"], Enumerable.Range(2, 3).Select(week => next.Text("calf", week)));
        Assert.Equal("heel-raise 2x10", Second.Draft().Text("calf", 3));
    }

    [Fact]
    public void What_is_done_can_be_neither_edited_nor_found_fault_with()
    {
        PlanRevision standing = PlanEdit.Set(First.Draft(), new CellAddress("with-stim", 2), null);
        standing = PlanEdit.Set(standing, new CellAddress("quads-strength", 2), null);
        standing = PlanEdit.Set(standing, new CellAddress("quads-function", 2), null);
        Assert.Contains(First.Check(standing), finding => finding.Rule == "PAIR-NONE");

        PlanRevision next = Redraft.Over(standing, Second.Draft());

        Assert.Equal((2, 3), (standing.FirstOpenWeek, next.FirstOpenWeek));
        Assert.Contains("done", PlanEdit.WhyNot(next, new CellAddress("stim", 2)), StringComparison.Ordinal);
        Assert.Null(PlanEdit.WhyNot(next, new CellAddress("stim", 3)));
        Assert.DoesNotContain(Second.Check(next), finding => finding.Cells.Any(cell => cell.Week < 3 && cell.Lane != "lag"));
    }

    [Fact]
    public void A_pinned_cell_is_kept_and_told_what_the_fresh_draft_would_put()
    {
        PlanRevision standing = First.Draft();
        CellAddress cell = new("stim", 4);
        PlanRevision pinned = PlanEdit.Set(standing, cell, Grid.Read(standing, "stim", "high 12x2 daily"), "skin");

        PlanRevision next = Redraft.Over(pinned, Second.Draft());

        Assert.Equal("high 12x2 daily", next.Text("stim", 4));
        Assert.Equal("skin", next.At(cell)!.Pin!.Reason);
        Assert.Equal("reduced 15x1 daily", PlanEdit.Unpin(next, cell).Text("stim", 4));
    }

    [Fact]
    public void A_pin_where_the_fresh_draft_is_empty_goes_back_to_empty()
    {
        PlanRevision standing = First.Draft();
        CellAddress cell = new("walking", 4);
        PlanRevision pinned = PlanEdit.Set(standing, cell, Grid.Read(standing, "walking", "walk-with-aid 5 min"));

        PlanRevision next = Redraft.Over(pinned, Second.Bearing(null).Draft());

        Assert.Equal("walk-with-aid 5 min", next.Text("walking", 4));
        Assert.Null(PlanEdit.Unpin(next, cell).ContentAt("walking", 4));
    }

    [Fact]
    public void Pinned_stim_of_a_person_who_is_barred_by_now_stays_in_sight_and_is_a_stop()
    {
        PlanRevision pinned = PlanEdit.Set(First.Draft(), new CellAddress("stim", 4), Grid.Read(First.Draft(), "stim", "high 15x2 daily"));
        Knee barred = Second.Screened("clot", Answer.Yes);

        PlanRevision next = Redraft.Over(pinned, barred.Draft());

        Assert.NotNull(next.LaneOf("stim"));
        Assert.NotEmpty(next.StimBarred);
        Finding finding = Assert.Single(barred.Check(next).Of("STIM-BARRED"));
        Assert.Contains(new CellAddress("stim", 4), finding.Cells);
    }

    [Fact]
    public void Stim_of_past_weeks_is_no_finding_once_the_person_is_barred()
    {
        Knee barred = Second.Screened("clot", Answer.Yes);

        PlanRevision next = Redraft.Over(First.Draft(), barred.Draft());

        Assert.Equal("high 15x2 daily", next.Text("stim", 2));
        Assert.Empty(barred.Check(next).Of("STIM-BARRED"));
    }

    [Fact]
    public void Weeks_the_fresh_plan_no_longer_has_are_dropped()
    {
        PlanRevision next = Redraft.Over(PlanEdit.Set(First.Draft(8), new CellAddress("stim", 8), null), Second.Draft(6));

        Assert.DoesNotContain(next.Cells.Keys, cell => cell.Week > 6);
    }

    [Fact]
    public void Drafting_over_the_same_draft_changes_nothing()
    {
        PlanRevision plan = First.Draft();

        PlanRevision again = Redraft.Over(plan, plan);

        Assert.Equal(plan.Lanes, again.Lanes);
        Assert.Equal(plan.From, again.From);
        Assert.All(plan.Cells, pair => Assert.Same(pair.Value, again.At(pair.Key)));
        Assert.Equal(plan.Cells.Count, again.Cells.Count);
    }

    [Fact]
    public void Plans_of_different_people_are_not_laid_over_each_other()
    {
        Knee other = new(First.Case with { Code = CaseCode.Parse("K-002")! });

        Assert.Throws<ArgumentException>(() => Redraft.Over(First.Draft(), other.Draft()));
    }
}
