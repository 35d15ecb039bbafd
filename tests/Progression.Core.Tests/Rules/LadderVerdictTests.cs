using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>What a verdict says would change it, and how sure a step is.</summary>
public sealed class LadderVerdictTests
{
    [Fact]
    public void Each_unmet_condition_says_how_much_is_to_go()
    {
        LadderVerdict verdict = Judge(Look.Well.Lag(8).With(MeasureIds.QuadricepsTorque, 42).With(MeasureIds.StraightLegRaises, 7));

        Assert.Equal(
            [
                "extension lag 8 deg: 3 deg to go (at most 5 deg)",
                "straight-leg raises in a row 7: 3 to go (at least 10)",
                "strength against its pre-op value 42 %: 3 % to go (at least 45 %), or quadriceps index 42 %: 8 % to go (at least 50 %)",
            ],
            verdict.WouldChange);
        Assert.Null(verdict.FalseAdvance);
    }

    [Fact]
    public void What_holds_the_knee_back_has_to_end_first()
    {
        LadderVerdict sore = Judge(Look.Well.Says(Signs.SettledByMorning, Answer.No));
        LadderVerdict flagged = Judge(Look.Well.Says(Signs.InfectionSigns, Answer.Yes));

        Assert.Equal(["if no longer so: pain had not settled by next morning"], sore.WouldChange);
        Assert.Equal(
            ["if no longer so: signs that may mean an infection", "not yet: no red flag is open (open: infection; a clinician's note by name closes it)"],
            flagged.WouldChange);
    }

    [Fact]
    public void A_step_that_is_taken_would_be_changed_by_nothing_that_is_to_go() => Assert.Empty(Judge(Look.Well).WouldChange);

    [Fact] // 13.1 Nm: 50 to 63.09 Nm is the detectable change at 90 % with an error of 10 % [computed apart].
    public void A_gain_that_cannot_be_told_from_error_says_what_could()
    {
        LadderVerdict verdict = Knee.Well.WithoutPreOp().OtherIs(OtherKnee.Painful).Seen(21, Look.Well).Seen(28, Look.Well).Judge(Rung.HighVolume, 14);

        Assert.Equal("quadriceps strength 50 Nm: 13.1 Nm to go (at least 63.1 Nm)", Assert.Single(verdict.WouldChange));
    }

    [Theory] // Chance by the normal table: lags 3 and 3, mean 2 under the limit, 4.243 / root 2 = 3: P(z < -0.667) = .2525. Passive deficit 1: P(z < -1.333) = .0912.
    [InlineData(3, 1, 50, 0.2525, "extension lag")]
    [InlineData(0, 1, 50, 0.2281, "strength against its pre-op value")] // ln(50/45) / (0.1 x root 2) = 0.745
    [InlineData(0, 1, 80, 0.0912, "passive extension deficit")]
    [InlineData(5, 1, 50, 0.5, "extension lag")]
    public void A_step_down_says_the_chance_that_its_weakest_criterion_is_not_truly_met(double lag, double passive, double torque, double chance, string weakest)
    {
        Look look = Look.Well.With(MeasureIds.ExtensionPassive, passive).Lag(lag).With(MeasureIds.QuadricepsTorque, torque).With(MeasureIds.OtherTorque, 2 * torque);
        LadderVerdict verdict = Knee.Well.Seen(21, look).Seen(28, look).Judge(Rung.Reduced, 14);

        Assert.Equal(chance, verdict.FalseAdvance!.Value, 0.00006);
        Assert.Equal(weakest, verdict.WeakestCriterion);
    }

    [Fact]
    public void A_step_on_answers_alone_has_no_chance_to_tell() =>
        Assert.Null(Knee.Well.Stimulated(2, strong: true).Seen(6, Look.Well).Judge(Rung.Familiarise, 2).FalseAdvance);

    [Fact]
    public void A_note_frees_the_visit_before_it_and_the_step_counts_from_the_note()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(14, Look.Well).Seen(21, Look.Well.Says(Signs.InfectionSigns, Answer.Yes).With(MeasureIds.QuadricepsTorque, 52));

        Assert.Equal(Rung.HighVolume, knee.Course(21).Rung);
        Assert.Equal((Rung.Reduced, Knee.Day(24)), knee.Noted(FlagIds.Infection, 24).Course(21) is var course ? (course.Rung!.Value, course.Since!.Value) : default);
    }

    [Fact]
    public void A_note_after_the_next_visit_does_not_free_the_one_before()
    {
        Knee knee = Knee.Well.Stimulated(2, strong: true).Seen(14, Look.Well).Seen(21, Look.Well.Says(Signs.InfectionSigns, Answer.Yes))
            .Seen(28, Look.Well.Without(Signs.InfectionSigns).With(MeasureIds.QuadricepsTorque, 64)).Noted(FlagIds.Infection, 30);

        Assert.Equal(
            [LadderOutcome.ReferAndLock, LadderOutcome.NotEnoughInformation],
            knee.Course(35).Verdicts[1..].Select(verdict => verdict.Outcome));
    }

    private static LadderVerdict Judge(Look now) => Knee.Well.Seen(21, Look.Well).Seen(28, now).Judge(Rung.Reduced, 14);
}
