using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>
/// Every rule of the ladder at its limits and with its inputs missing. The limits are the shipped ones; their sources stand in the library.
/// </summary>
public sealed partial class LadderRulesTests
{
    [Theory] // 10 deg is the detectable change of a lag, 9.87, rounded up; full passive extension is at most 5 deg.
    [InlineData(12.9, 1, Truth.DoesNotHold)]
    [InlineData(13, 1, Truth.Holds)]
    [InlineData(13.1, 1, Truth.Holds)]
    [InlineData(13, 5, Truth.Holds)]
    [InlineData(13, 5.1, Truth.DoesNotHold)]
    public void A_lag_up_by_10_with_full_passive_extension_refers(double lag, double passive, Truth expected) =>
        Assert.Equal(expected, Refer(Look.Well.With(MeasureIds.ExtensionPassive, passive).Lag(lag)));

    [Fact]
    public void The_first_lag_has_nothing_to_rise_from() =>
        Assert.Equal(Truth.DoesNotHold, LadderRules.Refer.Apply(Knee.Well.Seen(21, Look.Well.Lag(20)).Facts(Rung.HighVolume, 14)).Truth);

    [Fact]
    public void The_best_earlier_lag_is_the_yardstick() =>
        Assert.Equal(Truth.Holds, LadderRules.Refer.Apply(
            Knee.Well.Seen(14, Look.Well.Lag(2)).Seen(21, Look.Well.Lag(8)).Seen(28, Look.Well.Lag(12)).Facts(Rung.HighVolume, 14)).Truth);

    [Theory]
    [InlineData(Answer.No, Truth.Holds)]
    [InlineData(Answer.Yes, Truth.DoesNotHold)]
    public void A_straight_leg_raise_that_is_lost_refers(Answer now, Truth expected) =>
        Assert.Equal(expected, Refer(Look.Well.Says(Signs.StraightLegRaise, now)));

    [Theory]
    [InlineData(0, Truth.Holds)]
    [InlineData(1, Truth.DoesNotHold)]
    public void Counted_raises_answer_where_the_sign_was_not_asked(double raises, Truth expected) =>
        Assert.Equal(expected, Refer(Look.Well.Without(Signs.StraightLegRaise).With(MeasureIds.StraightLegRaises, raises)));

    [Fact]
    public void A_raise_never_seen_is_not_lost() =>
        Assert.Equal(Truth.DoesNotHold, LadderRules.Refer.Apply(
            Knee.Well.Seen(21, CannotRaise).Seen(28, CannotRaise).Facts(Rung.HighVolume, 14)).Truth);

    [Theory]
    [InlineData(Signs.PopFallOrGap)]
    [InlineData(Signs.ClotSigns)]
    [InlineData(Signs.InfectionSigns)]
    [InlineData(Signs.UrgentSigns)]
    public void A_flag_refers_when_it_is_seen_and_is_asked_for_when_it_is_not_known(string sign)
    {
        Assert.Equal(Truth.Holds, Refer(Look.Well.Says(sign, Answer.Yes)));
        Assert.Equal(Truth.DoesNotHold, Refer(Look.Well.Says(sign, Answer.No)));
        Assert.Equal(Truth.NotKnown, Refer(Look.Well.Says(sign, Answer.Unknown)));
        Assert.Equal(Truth.NotKnown, Refer(Look.Well.Without(sign)));
        Assert.Contains($"ask: {Signs.Questions[sign]}", Ready(Look.Well.Without(sign)).Judge(Rung.Reduced, 14).ToMeasure);
    }

    [Theory]
    [InlineData(Signs.PopFallOrGap)]
    [InlineData(Signs.ClotSigns)]
    [InlineData(Signs.InfectionSigns)]
    [InlineData(Signs.UrgentSigns)]
    public void A_flag_once_seen_stands_until_it_is_answered_no(string sign)
    {
        Knee flagged = Knee.Well.Seen(21, Look.Well.Says(sign, Answer.Yes));

        Assert.Equal(Truth.Holds, LadderRules.Refer.Apply(flagged.Seen(28, Look.Well.Without(sign)).Facts(Rung.Reduced, 14)).Truth);
        Assert.Equal(Truth.Holds, LadderRules.Refer.Apply(flagged.Seen(28, Look.Well.Says(sign, Answer.Unknown)).Facts(Rung.Reduced, 14)).Truth);
        Assert.Equal(Truth.DoesNotHold, LadderRules.Refer.Apply(flagged.Seen(28, Look.Well).Facts(Rung.Reduced, 14)).Truth);
    }

    [Fact]
    public void A_lost_raise_stands_until_it_is_seen_again()
    {
        Knee lost = Knee.Well.Seen(14, Look.Well).Seen(21, CannotRaise);

        Assert.Equal(Truth.Holds, LadderRules.Refer.Apply(lost.Seen(28, NotAskedToRaise).Facts(Rung.Reduced, 14)).Truth);
        Assert.Equal(Truth.DoesNotHold, LadderRules.Refer.Apply(lost.Seen(28, Look.Well).Facts(Rung.Reduced, 14)).Truth);
    }

    [Fact]
    public void Refer_is_not_known_without_the_lag_or_the_raise()
    {
        Assert.Equal(Truth.NotKnown, Refer(Look.Well.Without(MeasureIds.ExtensionActive)));
        Assert.Equal(Truth.NotKnown, Refer(Look.Well.Without(MeasureIds.ExtensionPassive)));
        Assert.Equal(Truth.NotKnown, Refer(NotAskedToRaise));
    }

    [Theory] // Stiff: under 90 deg at 6 to 12 weeks, Tibbo 2019, PMC6641113. Week 6 is days 35 to 41.
    [InlineData(35, 89.9, Truth.Holds)]
    [InlineData(35, 90, Truth.DoesNotHold)]
    [InlineData(35, 90.1, Truth.DoesNotHold)]
    [InlineData(34, 89.9, Truth.DoesNotHold)]
    [InlineData(47, 85, Truth.Holds)] // worked example 29 of the project's reference: 85 deg at week 7
    public void A_knee_under_90_deg_from_week_6_on_is_referred(int day, double flexion, Truth expected) =>
        Assert.Equal(expected, Stiff(day, Look.Well.With(MeasureIds.FlexionActive, flexion)));

    [Theory] // Over 10 deg at week 6: common practice.
    [InlineData(35, 10, Truth.DoesNotHold)]
    [InlineData(35, 10.1, Truth.Holds)]
    [InlineData(34, 10.1, Truth.DoesNotHold)]
    public void A_knee_that_stays_bent_by_more_than_10_deg_from_week_6_on_is_referred(int day, double deficit, Truth expected) =>
        Assert.Equal(expected, Stiff(day, Look.Well.With(MeasureIds.ExtensionPassive, deficit).Lag(3)));

    [Fact]
    public void Flexion_is_asked_for_from_its_week_on()
    {
        Assert.Equal(Truth.NotKnown, Stiff(35, Look.Well.Without(MeasureIds.FlexionActive)));
        Assert.Equal(Truth.DoesNotHold, Stiff(34, Look.Well.Without(MeasureIds.FlexionActive)));
    }

    private static Look CannotRaise => Look.Well.Says(Signs.StraightLegRaise, Answer.No).With(MeasureIds.StraightLegRaises, 0);

    private static Look NotAskedToRaise => Look.Well.Without(Signs.StraightLegRaise).Without(MeasureIds.StraightLegRaises);

    private static Truth Refer(Look now) => LadderRules.Refer.Apply(Ready(now).Facts(Rung.Reduced, 14)).Truth;

    private static Truth Stiff(int day, Look now) => LadderRules.ReferStiff.Apply(Knee.Well.Seen(day, now).Facts(Rung.HighVolume, 14)).Truth;

    /// <summary>Seen well on day 21 and then as told on day 28.</summary>
    private static Knee Ready(Look now) => Knee.Well.Seen(21, Look.Well).Seen(28, now);
}
