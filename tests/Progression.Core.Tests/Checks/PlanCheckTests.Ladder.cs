using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>The plan against the stim ladder, the screening and the pins.</summary>
public sealed partial class PlanCheckTests
{
    [Fact]
    public void Stim_past_its_stop_criterion_is_warned_of_and_stopped_by_the_cure()
    {
        Knee done = Knee.Well.Stimulated(2, strong: true).Seen(21, Strong).Seen(28, Strong);
        PlanRevision plan = Stimulated(weeks: 7);

        Finding finding = Assert.Single(done.Check(plan).Of("PAIR-PAST-STOP"));

        // Day 28 is the first of week 5, so weeks 6 and 7 start after it.
        Assert.Equal([new CellAddress("stim", 6), new CellAddress("stim", 7)], finding.Cells);
        Assert.Contains("met on 2026-03-30", finding.Text, StringComparison.Ordinal);
        PlanRevision cured = PlanEdit.Apply(plan, finding.Cure!);
        Assert.Empty(done.Check(cured).Of("PAIR-PAST-STOP"));
        Assert.Equal("stopped", cured.Text("stim", 6));
    }

    [Fact]
    public void Stim_up_to_its_stop_criterion_is_no_finding() =>
        Assert.Empty(Knee.Well.Stimulated(2, strong: true).Seen(21, Strong).Seen(28, Strong).Check(Stimulated(weeks: 5)).Of("PAIR-PAST-STOP"));

    [Fact]
    public void A_knee_that_went_back_from_stopped_may_have_stim_again()
    {
        Knee back = Knee.Well.Stimulated(2, strong: true).Seen(21, Strong).Seen(28, Strong).Seen(35, Strong.Lag(12.9));

        Assert.Equal(Rung.LowVolume, back.Course(35).Rung);
        Assert.Empty(back.Check(Stimulated(weeks: 7)).Of("PAIR-PAST-STOP"));
    }

    [Fact]
    public void A_knee_that_stays_stopped_is_told_so_and_not_to_step_back()
    {
        Knee stopped = Knee.Well.Stimulated(2, strong: true).Seen(21, Strong).Seen(28, Strong).Seen(35, Strong);

        Finding verdict = Assert.Single(stopped.Check(Grid.Empty(weeks: 7)), finding => finding.Text.StartsWith("Ladder on", StringComparison.Ordinal));

        Assert.Equal("Ladder on 2026-04-06: hold. Stim has stopped, and nothing asks for it again.", verdict.Text);
        Assert.Contains("met on 2026-03-30", Assert.Single(stopped.Check(Stimulated(weeks: 7)).Of("PAIR-PAST-STOP")).Text, StringComparison.Ordinal);
    }

    [Theory] // Courses of the trials last six weeks. Week 6 is days 35 to 41.
    [InlineData(34, false)]
    [InlineData(35, true)]
    [InlineData(41, true)]
    public void From_week_6_on_a_step_that_is_due_is_asked_for(int day, bool warned)
    {
        Knee due = Knee.Well.Stimulated(20, strong: true).Seen(day - 7, Look.Well).Seen(day, Look.Well);

        Assert.Equal(warned, due.Check(Stimulated(weeks: 8)).Of("LADDER-WEEK-6") is [{ Severity: Severity.Warning }]);
    }

    [Fact]
    public void A_plan_that_takes_the_step_is_not_asked_again()
    {
        Knee due = Knee.Well.Stimulated(20, strong: true).Seen(28, Look.Well).Seen(35, Look.Well);

        Assert.Empty(due.Check(Stimulated(weeks: 7).Put("stim", 7, "reduced 15x1 daily")).Of("LADDER-WEEK-6"));
    }

    [Theory] // Two weeks past the trials' courses: common practice.
    [InlineData(7, null)]
    [InlineData(8, Severity.Note)]
    [InlineData(9, Severity.Warning)]
    public void Stim_in_week_8_and_after_is_reviewed(int week, Severity? severity)
    {
        PlanRevision plan = Grid.Empty(weeks: 10).Put("stim", week, "low 15x1 mon wed fri").Put("with-stim", week, "quad-set-with-stim 1x15 hold 15 s mon wed fri");

        Finding? finding = Check(plan).Of("LADDER-WEEK-8").SingleOrDefault();

        Assert.Equal(severity, finding?.Severity);
        Assert.True(finding is null || Check(PlanEdit.Apply(plan, finding.Cure!)).Of("LADDER-WEEK-8").IsEmpty);
    }

    [Fact]
    public void The_verdict_of_the_ladder_is_told_with_what_to_measure()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(21, Look.Well).Seen(28, Look.Well.Without(MeasureIds.QuadricepsTorque));

        Finding finding = Assert.Single(knee.Check(Grid.Empty(weeks: 6)).Of("LADDER-DOWN"));

        Assert.Contains("not enough information", finding.Text, StringComparison.Ordinal);
        Assert.Contains("measure quadriceps strength", finding.Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Note, finding.Severity);
    }

    [Fact]
    public void A_hold_names_what_is_not_yet_met()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(21, Look.Well).Seen(28, Look.Well.Lag(8));

        Assert.Contains("hold. Not yet: extension lag is at most 5 deg", Assert.Single(knee.Check(Grid.Empty(weeks: 6)).Of("LADDER-DOWN")).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Stim_on_the_plan_of_a_barred_person_is_a_stop()
    {
        Knee barred = Knee.Well.Screened("active-implant", Answer.Yes);
        PlanRevision plan = Stimulated(weeks: 3);

        Finding finding = Assert.Single(barred.Check(plan).Of("STIM-BARRED"));

        Assert.Equal(Severity.Stop, finding.Severity);
        Assert.Equal(3, finding.Cells.Length);
        Assert.Empty(barred.Check(PlanEdit.Apply(plan, finding.Cure!)).Of("STIM-BARRED"));
        Assert.Empty(Check(plan).Of("STIM-BARRED"));
    }

    [Theory] // The unaided leg does not extend beyond its passive end.
    [InlineData(-0.1, true)]
    [InlineData(0, false)]
    public void A_negative_lag_is_queried(double lag, bool queried)
    {
        Finding? finding = Knee.Well.Seen(14, Look.Well.With(MeasureIds.ExtensionPassive, 4).Lag(lag)).Check(Grid.Empty(from: 14)).Of("ENTRY-LAG-NEGATIVE").SingleOrDefault();

        Assert.Equal(queried, finding is { Severity: Severity.Warning } && finding.Cells.SequenceEqual([new CellAddress("lag", 3)]));
    }

    [Fact]
    public void A_pin_is_told_beside_what_the_draft_would_put()
    {
        CellAddress cell = new("stim", 2);
        PlanRevision plan = Stimulated(weeks: 3);
        PlanRevision pinned = PlanEdit.Set(plan, cell, Grid.Read(plan, "stim", "reduced 15x1 daily"), "travels that week");

        Finding finding = Assert.Single(Check(pinned).Of("PIN-DIFFERS"));

        Assert.Equal("Stim, week 2, is pinned at reduced 15x1 daily; the draft would put high 15x2 daily. Reason: travels that week", finding.Text);
        Assert.Empty(Check(PlanEdit.Set(plan, cell, plan.ContentAt("stim", 2))).Of("PIN-DIFFERS"));
    }

    [Fact]
    public void A_pin_against_a_safety_rule_is_asked_for_a_reason()
    {
        PlanRevision plan = Stimulated(weeks: 3);
        PlanRevision emptied = PlanEdit.Set(plan, new CellAddress("with-stim", 2), null);

        Assert.Equal(new CellAddress("with-stim", 2), Assert.Single(Assert.Single(Check(emptied).Of("PIN-REASON")).Cells));
        Assert.Empty(Check(PlanEdit.WithReason(emptied, new CellAddress("with-stim", 2), "does it in the pool")).Of("PIN-REASON"));
        Assert.Empty(Check(PlanEdit.Set(plan, new CellAddress("walking", 2), null)).Of("PIN-REASON"));
    }

    private static Look Strong => Look.Well.With(MeasureIds.QuadricepsTorque, 60);

    private static PlanRevision Stimulated(int weeks) => Enumerable.Range(1, weeks).Aggregate(
        Grid.Empty(weeks), (plan, week) => plan.Put("stim", week, "high 15x2 daily").Put("with-stim", week, Paired));
}
