using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>Which outcome wins: refer, stop, step back, hold, step down, not enough information; the others stay listed.</summary>
public sealed partial class StimLadderTests
{
    [Fact]
    public void Outcomes_are_ordered_from_the_strongest() => Assert.Equal(
        [
            LadderOutcome.ReferAndLock, LadderOutcome.Stop, LadderOutcome.StepBack, LadderOutcome.Hold, LadderOutcome.StepDown,
            LadderOutcome.NotEnoughInformation,
        ],
        Enum.GetValues<LadderOutcome>());

    [Fact]
    public void Refer_wins_over_stop()
    {
        LadderVerdict verdict = Knee.Well.Seen(28, Strong).Seen(35, Strong.With(MeasureIds.FlexionActive, 89)).Judge(Rung.LowVolume, 14);

        // The stiff knee fails "no red flag" of the stop criterion too, so only the plateau can be weighed against it.
        Assert.Equal((LadderOutcome.ReferAndLock, Rung.LowVolume, "LADDER-REFER-STIFF"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
    }

    [Fact]
    public void Refer_wins_over_a_plateau()
    {
        LadderVerdict verdict = Knee.Well.Stimulated(2).Seen(14, Look.Well).Seen(28, Look.Well.Says(Signs.ClotSigns, Answer.Yes)).Judge(Rung.Reduced, 14);

        Assert.Equal((LadderOutcome.ReferAndLock, Rung.Reduced, "LADDER-REFER"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
        Assert.Contains("LADDER-STOP-PLATEAU", Holding(verdict));
    }

    [Fact]
    public void Stop_wins_over_step_back_hold_and_step_down()
    {
        // Strength fell from 80 to 60 Nm, so step back holds; 60 % of pre-op still meets the stop criterion; the knee is sore as well.
        LadderVerdict verdict = Knee.Well.Seen(21, Look.Well.With(MeasureIds.QuadricepsTorque, 80))
            .Seen(28, Strong.Says(Signs.SettledByMorning, Answer.No)).Judge(Rung.LowVolume, 14);

        Assert.Equal((LadderOutcome.Stop, Rung.Stopped), (verdict.Outcome, verdict.To));
        Assert.Equal(["LADDER-STOP-MET", "LADDER-BACK", "LADDER-IRRITATION"], Holding(verdict));
    }

    [Theory]
    [InlineData(Rung.Reduced, Rung.HighVolume)]
    [InlineData(Rung.LowVolume, Rung.Reduced)]
    [InlineData(Rung.Stopped, Rung.LowVolume)]
    public void Step_back_goes_one_rung_up_the_volume(Rung from, Rung to)
    {
        LadderVerdict verdict = Worse().Judge(from, 14);

        Assert.Equal((LadderOutcome.StepBack, to, "step back"), (verdict.Outcome, verdict.To, verdict.OutcomeWords));
    }

    [Theory]
    [InlineData(Rung.Familiarise)]
    [InlineData(Rung.HighVolume)]
    public void On_the_highest_rungs_a_worse_knee_holds(Rung rung)
    {
        LadderVerdict verdict = Worse().Judge(rung, 14);

        Assert.Equal((LadderOutcome.Hold, rung, "LADDER-HOLD-WORSE"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
    }

    [Fact]
    public void Hold_wins_over_step_down()
    {
        LadderVerdict verdict = Knee.Well.Seen(21, Look.Well).Seen(28, Look.Well.Says(Signs.SettledByMorning, Answer.No)).Judge(Rung.Reduced, 14);

        Assert.Equal((LadderOutcome.Hold, Rung.Reduced, "LADDER-IRRITATION"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
        Assert.Equal(["LADDER-IRRITATION", "LADDER-DOWN"], Holding(verdict));
    }

    [Fact]
    public void No_response_holds_although_familiarising_is_over()
    {
        LadderVerdict verdict = Knee.Well.Stimulated(2, strong: true).Seen(10, Look.Well.Says(Signs.StimContraction, Answer.No)).Judge(Rung.Familiarise, 2);

        Assert.Equal((LadderOutcome.Hold, Rung.Familiarise, "LADDER-RESPONSE"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
    }

    [Fact]
    public void Familiarising_goes_on_to_high_volume()
    {
        LadderVerdict verdict = Knee.Well.Stimulated(2, strong: true).Seen(6, Look.Well).Judge(Rung.Familiarise, 2);

        Assert.Equal((LadderOutcome.StepDown, Rung.HighVolume, "go on to high volume"), (verdict.Outcome, verdict.To, verdict.OutcomeWords));
    }

    [Fact]
    public void Not_enough_information_is_said_only_when_nothing_else_decides()
    {
        Look noLag = Look.Well.Without(MeasureIds.ExtensionActive);

        Assert.Equal(LadderOutcome.NotEnoughInformation, Knee.Well.Seen(21, Look.Well).Seen(28, noLag).Judge(Rung.Reduced, 14).Outcome);
        Assert.Equal(
            LadderOutcome.Hold,
            Knee.Well.Seen(21, Look.Well).Seen(28, noLag.Says(Signs.SettledByMorning, Answer.No)).Judge(Rung.Reduced, 14).Outcome);
        Assert.Equal(LadderOutcome.NotEnoughInformation, Knee.Well.Seen(28, Look.Empty).Judge(Rung.Reduced, 14).Outcome);
    }

    [Theory]
    [InlineData(Rung.Reduced)]
    [InlineData(Rung.LowVolume)]
    [InlineData(Rung.Stopped)]
    public void An_irritated_knee_is_never_given_more_even_when_it_is_worse(Rung rung)
    {
        LadderVerdict verdict = Worse(Signs.SettledByMorning).Judge(rung, 14);

        Assert.Equal((LadderOutcome.Hold, rung, "LADDER-IRRITATION"), (verdict.Outcome, verdict.To, verdict.DecidedBy.Id));
        Assert.Contains("LADDER-BACK", Holding(verdict));
    }

    [Fact]
    public void After_stopping_a_well_knee_stays_stopped() =>
        Assert.Equal((LadderOutcome.Hold, Rung.Stopped), Knee.Well.Seen(21, Look.Well).Seen(28, Look.Well).Judge(Rung.Stopped, 14) is var verdict ? (verdict.Outcome, verdict.To) : default);

    [Fact]
    public void Every_rule_has_an_id_of_its_own_a_source_and_conditions()
    {
        Assert.Equal(LadderRules.All.Length, LadderRules.All.Select(rule => rule.Id).Distinct().Count());
        Assert.All(LadderRules.All, rule =>
        {
            Assert.NotEmpty(rule.When);
            Assert.NotEmpty(rule.On);
            Assert.NotEmpty(rule.Source.Text);
            Assert.NotEmpty(rule.KnownLimits);
        });
    }

    [Fact]
    public void Every_condition_that_compares_names_its_limit()
    {
        LadderVerdict verdict = Knee.Well.Seen(21, Look.Well).Seen(28, Look.Well).Judge(Rung.Reduced, 14);
        RuleResult down = verdict.Results.Single(result => result.Rule == LadderRules.StepDown);

        Assert.Equal(
            [
                LimitIds.LagClosed, LimitIds.LagConfirmedAfter, LimitIds.LagGuardSems, LimitIds.StraightLegRaises, LimitIds.PassiveDeficit,
                LimitIds.ReducedToLowPreOp, LimitIds.ReducedToLowIndex, LimitIds.ChangeLevel, LimitIds.DaysOnRung,
            ],
            down.Conditions.SelectMany(condition => condition.Limits).Select(limit => limit.Id));
    }

    private static Look Strong => Look.Well.With(MeasureIds.QuadricepsTorque, 60);

    /// <summary>The lag is up by 9.9 deg: more than is detectable, less than a red flag.</summary>
    private static Knee Worse(string? answeredNo = null) =>
        Knee.Well.Seen(21, Look.Well).Seen(28, answeredNo is null ? Look.Well.Lag(12.9) : Look.Well.Lag(12.9).Says(answeredNo, Answer.No));

    private static ImmutableArray<string> Holding(LadderVerdict verdict) =>
        [.. verdict.Results.Where(result => result.Truth == Truth.Holds).Select(result => result.Rule.Id)];
}
