using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>
/// The pairing warnings. That stim is an addition to active work follows the trials, all but one of which added it to exercise; the numbers are common
/// practice. Each is tested on and off, with its cells and figures, and its cure is applied.
/// </summary>
public sealed partial class PlanCheckTests
{
    private const string Paired = "quad-set-with-stim 1x15 hold 15 s 2/day";

    [Fact] // 15 contractions x 2 a day x 7 days = 210: Stevens-Lapsley 2012, 7 days assumed.
    public void Stim_in_a_week_without_voluntary_quadriceps_work_is_severe()
    {
        Finding finding = One("PAIR-NONE", Grid.Empty().Put("stim", 2, "high 15x2 daily"));

        Assert.Equal(Severity.Severe, finding.Severity);
        Assert.Contains("210 stimulated contractions", finding.Text, StringComparison.Ordinal);
        Assert.Equal([new CellAddress("stim", 2), new CellAddress("with-stim", 2)], finding.Cells);
        Assert.Equal(["14", "210", "0", "0 min"], finding.Inputs.Select(input => input.Value));
    }

    [Fact]
    public void Paired_stim_has_no_pairing_finding() =>
        Assert.Empty(Pairing(Grid.Empty().Put("stim", 2, "high 15x2 daily").Put("with-stim", 2, Paired)));

    [Fact]
    public void Stim_that_has_stopped_needs_no_pair() => Assert.Empty(Pairing(Grid.Empty().Put("stim", 2, "stopped")));

    [Fact]
    public void The_cure_of_unpaired_stim_puts_the_contraction_beside_it()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 15x2 mon wed fri");

        PlanRevision cured = PlanEdit.Apply(plan, One("PAIR-NONE", plan).Cure!);

        Assert.Empty(Pairing(cured));
        Assert.Equal("quad-set-with-stim 1x15 hold 15 s 2/day mon wed fri", cured.Text("with-stim", 2));
        Assert.True(cured.At(new CellAddress("with-stim", 2))!.IsPinned);
    }

    [Fact]
    public void A_stim_day_without_voluntary_work_is_named()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 15x1 mon tue").Put("with-stim", 2, "quad-set-with-stim 2x15 hold 15 s mon");

        Finding finding = One("PAIR-DAY", plan);

        // Day 8 after a Monday operation is a Tuesday.
        Assert.EndsWith("on Tue 10 Mar.", finding.Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Empty(Pairing(PlanEdit.Apply(plan, finding.Cure!)));
    }

    [Fact]
    public void Quadriceps_work_of_another_lane_pairs_a_day() =>
        Assert.Empty(Pairing(Grid.Empty().Put("stim", 2, "high 15x1 mon tue").Put("quads-strength", 2, "quad-set 2x10 hold 5 s mon tue")));

    [Theory] // At most one stimulated to one voluntary contraction, common practice.
    [InlineData("15x1 mon", false)]
    [InlineData("16x1 mon", true)]
    [InlineData("14x1 mon", false)]
    public void More_stimulated_than_voluntary_contractions_are_warned_of(string dose, bool warned)
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, $"high {dose}").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon");

        ImmutableArray<Finding> found = Check(plan).Of("PAIR-RATIO");

        Assert.Equal(warned, !found.IsEmpty);
        Assert.All(found, finding => Assert.Empty(Pairing(PlanEdit.Apply(plan, finding.Cure!))));
    }

    [Fact]
    public void The_ratio_warning_tells_both_counts_and_the_limit()
    {
        Finding finding = One("PAIR-RATIO", Grid.Empty().Put("stim", 2, "high 16x1 mon").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon"));

        Assert.Equal("Week 2: 16 stimulated to 15 voluntary quadriceps contractions; at most 1 to 1 is asked for.", finding.Text);
        Assert.Equal(LimitIds.PairingRatio, Assert.Single(finding.Limits).Id);
        Assert.Equal(Severity.Warning, finding.Severity);
    }

    [Fact]
    public void The_ratio_follows_the_clinics_limit()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 30x1 mon").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon");

        Assert.Empty(Knee.Well.Check(plan, Knee.LibraryWith(LimitIds.PairingRatio, 2)).Of("PAIR-RATIO"));
        Assert.Single(Knee.Well.Check(plan, Knee.LibraryWith(LimitIds.PairingRatio, 1.9)).Of("PAIR-RATIO"));
    }

    [Fact]
    public void Work_of_another_muscle_only_is_named()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 15x1 mon").Put("calf", 2, "ankle-pump 1x20").Put("hip", 2, "glute-set 2x10 hold 5 s");

        Finding finding = One("PAIR-OTHER-MUSCLE", plan);

        Assert.EndsWith("only of: hip, calf.", finding.Text, StringComparison.Ordinal);
        Assert.Equal([new CellAddress("stim", 2), new CellAddress("hip", 2), new CellAddress("calf", 2)], finding.Cells);
        Assert.Empty(Pairing(PlanEdit.Apply(plan, finding.Cure!)));
    }

    [Fact]
    public void Range_work_is_work_of_no_muscle() =>
        Assert.Empty(Check(Grid.Empty().Put("stim", 2, "high 15x1 mon").Put("bend", 2, "heel-slide 2x10").Put("walking", 2, "walk-with-aid 5 min")).Of("PAIR-OTHER-MUSCLE"));

    [Fact]
    public void Quadriceps_beside_another_muscle_is_no_finding() =>
        Assert.Empty(Check(Grid.Empty().Put("stim", 2, "high 15x1 mon").Put("calf", 2, "ankle-pump 1x20").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon")).Of("PAIR-OTHER-MUSCLE"));

    [Fact]
    public void A_contraction_that_moves_goes_against_a_regimen_held_still()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 15x2 daily").Put("with-stim", 2, "long-arc-part 1x15 2/day");

        Finding finding = One("PAIR-MOVING", plan);

        Assert.Equal(new CellAddress("with-stim", 2), Assert.Single(finding.Cells));
        Assert.Empty(Pairing(PlanEdit.Apply(plan, finding.Cure!)));
    }

    [Theory]
    [InlineData("strong-45-minutes")] // the paper leaves it open
    [InlineData("no-such-regimen")]
    public void A_regimen_that_does_not_say_so_lets_the_contraction_move(string regimen) =>
        Assert.Empty(Check(Grid.Empty(regimen: regimen).Put("stim", 2, "high 15x2 daily").Put("with-stim", 2, "long-arc-part 1x15 2/day")).Of("PAIR-MOVING"));

    [Fact]
    public void Active_work_dropped_while_stim_stays_is_severe()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 1, "high 15x2 daily").Put("with-stim", 1, Paired).Put("calf", 1, "ankle-pump 1x20").Put("stim", 2, "high 15x2 daily");

        Finding finding = One("PAIR-DROPPED", plan);

        Assert.Equal(Severity.Severe, finding.Severity);
        Assert.Contains("14 sessions", finding.Text, StringComparison.Ordinal);
        Assert.Equal([new CellAddress("stim", 2), new CellAddress("with-stim", 2), new CellAddress("calf", 2)], finding.Cells);
        PlanRevision cured = PlanEdit.Apply(plan, finding.Cure!);
        Assert.Empty(Pairing(cured));
        Assert.Equal(plan.Text("calf", 1), cured.Text("calf", 2));
    }

    [Fact]
    public void Active_work_that_never_was_is_not_dropped() =>
        Assert.Empty(Check(Grid.Empty().Put("stim", 1, "high 15x2 daily").Put("stim", 2, "high 15x2 daily")).Of("PAIR-DROPPED"));

    [Fact]
    public void Active_work_dropped_together_with_stim_is_no_pairing_matter() =>
        Assert.Empty(Pairing(Grid.Empty().Put("stim", 1, "high 15x2 daily").Put("with-stim", 1, Paired)));

    private static ImmutableArray<Finding> Check(PlanRevision plan) => Knee.Well.Check(plan);

    private static Finding One(string rule, PlanRevision plan) => Assert.Single(Check(plan).Of(rule));

    private static IEnumerable<string> Pairing(PlanRevision plan) =>
        Check(plan).Select(finding => finding.Rule).Where(rule => rule.StartsWith("PAIR-", StringComparison.Ordinal));
}
