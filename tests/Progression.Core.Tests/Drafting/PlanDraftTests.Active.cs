using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Drafting;

/// <summary>The active lanes of a draft: which exercise, and how much of it. Needs and doses are the library's, mostly common practice.</summary>
public sealed partial class PlanDraftTests
{
    [Fact] // Lag 3, flexion 100, straight-leg raise: part of the long arc; to straight from week 3, the machine from week 6.
    public void The_hardest_exercise_whose_needs_are_met_is_taken()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft(7);

        Assert.Equal(
            ["long-arc-part", "long-arc-part", "long-arc-full", "long-arc-full", "long-arc-full", "machine-extension", "machine-extension"],
            Exercises(plan, "quads-strength"));
    }

    [Fact] // Without a measured lag nothing that asks for one is admitted; a contraction may be expected once its milestone, week 1.5, is past.
    public void Nothing_is_admitted_on_a_guess()
    {
        PlanRevision plan = Knee.Well.Draft(6);

        Assert.Equal(["quad-set", .. Enumerable.Repeat("helped-leg-raise", 5)], Exercises(plan, "quads-strength"));
        Assert.Equal(Enumerable.Repeat("heel-slide", 6), Exercises(plan, "bend"));
    }

    [Theory]
    [InlineData(WeightBearing.None)]
    [InlineData(null)]
    public void Without_leave_to_load_the_leg_nothing_is_done_standing(WeightBearing? allowed)
    {
        PlanRevision plan = Knee.Well.Bearing(allowed).Seen(2, Look.Well).Draft(8);

        Assert.All(Exercises(plan, "walking").Concat(Exercises(plan, "quads-function")), exercise => Assert.Equal("", exercise));
    }

    [Fact] // 10 s, 2 s more each week, at most 20 s.
    public void A_hold_grows_up_to_its_ceiling() => Assert.Equal(
        ["10 s", "12 s", "14 s", "16 s", "18 s", "20 s", "20 s"],
        Doses(Knee.Well.Bearing(WeightBearing.None).Seen(2, Look.Well).Draft(7), "bend").Select(dose => dose.Hold!.ToString()));

    [Fact] // 10 repetitions from week 2 on, 2 more each week, at most 20.
    public void Repetitions_grow_up_to_their_ceiling() => Assert.Equal(
        [20, 10, 12, 14, 16, 18, 20, 20],
        Doses(Knee.Well.Seen(2, Look.Well).Draft(8), "calf").Select(dose => dose.Repetitions!.Value));

    [Fact] // 5 min, 1 min more each week, at most 8 min.
    public void Minutes_grow_up_to_their_ceiling() => Assert.Equal(
        [300, 360, 420, 480, 480, 480],
        Doses(Knee.Well.Bearing(WeightBearing.Touch).Draft(6), "walking").Select(dose => dose.Bout!.Seconds));

    [Fact] // 3 sets, 1 more every second week, at most 4. Touch is not enough for standing work, partial is for sit to stand only.
    public void Sets_grow_every_second_week_up_to_their_ceiling() => Assert.Equal(
        [3, 3, 4, 4, 4, 4],
        Doses(Knee.Well.Bearing(WeightBearing.Partial).Seen(2, Look.Well).Draft(6), "quads-function").Select(dose => dose.Sets));

    [Fact]
    public void Load_that_must_be_earned_does_not_grow_by_itself()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft(6);

        Assert.Equal(["long-arc-full 3x10 hold 2 s load effort 13"], Enumerable.Range(3, 3).Select(week => plan.Text("quads-strength", week)).Distinct());
    }

    [Fact] // Week 3 starts on day 14.
    public void The_surgeons_bounds_come_first()
    {
        Knee knee = Knee.Well.Seen(2, Look.Well);
        Knee bounded = new(knee.Case with
        {
            Surgeon = new SurgeonLimits { NoResistanceBefore = Knee.Day(21), FlexionAtMost = Angle.FromDegrees(80) },
        });

        PlanRevision plan = bounded.Draft(4);

        // The long arc bends to 90 deg; the straight-leg raise does not bend. The strap against which one pushes is resistance.
        Assert.Equal(Enumerable.Repeat("straight-leg-raise", 4), Exercises(plan, "quads-strength"));
        Assert.Equal(["quad-set-with-stim", "quad-set-with-stim", "quad-set-with-stim", "held-push-with-stim"], Exercises(plan, "with-stim"));
    }

    [Fact]
    public void Targets_go_from_milestone_to_milestone()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft(4);

        Assert.Equal(["80 deg", "90 deg", "95 deg", "99 deg"], Enumerable.Range(1, 4).Select(week => plan.Text("flexion", week)));
        Assert.Equal(["10 deg", "8 deg", "5 deg", "5 deg"], Enumerable.Range(1, 4).Select(week => plan.Text("lag", week)));
        Assert.Contains("Straight-leg raise without help", plan.Text("skills", 2), StringComparison.Ordinal);
        Assert.Equal("", plan.Text("skills", 3));
    }

    [Fact]
    public void Every_cell_of_a_draft_says_why_and_what_would_change_it()
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft();

        Assert.All(plan.Cells.Values, cell =>
        {
            Assert.NotEmpty(cell.Basis.Reason);
            Assert.NotEmpty(cell.Basis.Source.Text);
            Assert.NotEmpty(cell.Basis.WouldChange);
            Assert.False(cell.IsPinned);
        });
    }

    private static ImmutableArray<string> Exercises(PlanRevision plan, string lane) =>
        [.. Enumerable.Range(1, plan.Weeks).Select(week => plan.ContentAt(lane, week) is ActiveCell cell ? cell.Exercise : "")];

    private static IEnumerable<ExerciseDose> Doses(PlanRevision plan, string lane) =>
        Enumerable.Range(1, plan.Weeks).Select(week => plan.ContentAt(lane, week)).OfType<ActiveCell>().Select(cell => cell.Dose);
}
