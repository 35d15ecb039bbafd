using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>Plateau, step back, irritation, response and familiarising.</summary>
public sealed partial class LadderRulesTests
{
    [Theory] // Two weeks under stim: common practice.
    [InlineData(15, Truth.DoesNotHold)]
    [InlineData(14, Truth.Holds)]
    [InlineData(13, Truth.Holds)]
    public void No_detectable_change_over_14_days_is_a_plateau(int before, Truth expected) =>
        Assert.Equal(expected, Plateau(Knee.Well.Stimulated(2).Seen(before, Look.Well).Seen(28, Look.Well)));

    [Theory] // Detectable at 90 %: 50 to 63.10 Nm and back to 39.62; lag by 9.87 deg [C].
    [InlineData(63.0, 3, Truth.Holds)]
    [InlineData(63.2, 3, Truth.DoesNotHold)]
    [InlineData(39.5, 3, Truth.DoesNotHold)]
    [InlineData(50, 12.8, Truth.Holds)]
    [InlineData(50, 12.9, Truth.DoesNotHold)]
    public void A_plateau_has_neither_gain_nor_loss(double torque, double lag, Truth expected) =>
        Assert.Equal(expected, Plateau(Knee.Well.Stimulated(2).Seen(14, Look.Well).Seen(28, Look.Well.With(MeasureIds.QuadricepsTorque, torque).Lag(lag))));

    [Fact]
    public void Time_before_the_first_session_is_no_plateau() =>
        Assert.Equal(Truth.DoesNotHold, Plateau(Knee.Well.Stimulated(15).Seen(14, Look.Well).Seen(28, Look.Well)));

    [Fact]
    public void A_plateau_is_not_known_without_its_readings_or_their_error()
    {
        Knee knee = Knee.Well.Stimulated(2).Seen(14, Look.Well);

        Assert.Equal(Truth.NotKnown, Plateau(knee.Seen(28, Look.Well.Without(MeasureIds.QuadricepsTorque))));
        Assert.Equal(Truth.NotKnown, Plateau(knee.Seen(28, Look.Well.Without(MeasureIds.ExtensionActive))));
        Assert.Equal(Truth.NotKnown, LadderRules.StopPlateau.Apply(knee.Seen(28, Look.Well).Facts(Rung.Reduced, 14, WithoutStrengthError)).Truth);
        Assert.Equal(Truth.DoesNotHold, Plateau(Knee.Well.Stimulated(2).Seen(14, Look.Well.Without(MeasureIds.QuadricepsTorque)).Seen(28, Look.Well)));
    }

    [Theory] // 5 deg on two readings in a row against the best before: common practice.
    [InlineData(8, 8, Truth.Holds)]
    [InlineData(7.9, 8, Truth.DoesNotHold)]
    [InlineData(8, 7.9, Truth.DoesNotHold)]
    public void A_lag_up_by_5_twice_steps_back(double first, double second, Truth expected) =>
        Assert.Equal(expected, Back(Knee.Well.Seen(14, Look.Well).Seen(21, Look.Well.Lag(first)).Seen(28, Look.Well.Lag(second))));

    [Fact]
    public void A_lag_up_once_by_less_than_its_detectable_change_does_not_step_back() => Assert.Equal(Truth.DoesNotHold, Back(Ready(Look.Well.Lag(8))));

    [Theory] // Detectable change of the lag 9.87 deg at 90 % [C].
    [InlineData(12.8, Truth.DoesNotHold)]
    [InlineData(12.9, Truth.Holds)]
    public void A_lag_up_by_its_detectable_change_steps_back_at_once(double lag, Truth expected) => Assert.Equal(expected, Back(Ready(Look.Well.Lag(lag))));

    [Theory] // 39.62 Nm [C].
    [InlineData(39.7, Truth.DoesNotHold)]
    [InlineData(39.5, Truth.Holds)]
    public void Strength_detectably_under_its_best_steps_back(double torque, Truth expected) =>
        Assert.Equal(expected, Back(Ready(Look.Well.With(MeasureIds.QuadricepsTorque, torque))));

    [Fact]
    public void Step_back_is_not_known_without_lag_or_strength()
    {
        Assert.Equal(Truth.NotKnown, Back(Ready(Look.Well.Without(MeasureIds.ExtensionPassive))));
        Assert.Equal(Truth.NotKnown, Back(Ready(Look.Well.Without(MeasureIds.QuadricepsTorque))));
        Assert.Equal(Truth.DoesNotHold, Back(Knee.Well.Seen(28, Look.Well)));
    }

    [Theory] // Two grades at once: Sturgill 2009, raters two grades apart in 5 of 75 pairs; one grade twice: common practice.
    [InlineData(1, 1, 2, Truth.DoesNotHold)]
    [InlineData(1, 1, 3, Truth.Holds)]
    [InlineData(0, 1, 1, Truth.Holds)]
    [InlineData(0, 1, 0, Truth.DoesNotHold)]
    [InlineData(1, 2, 2, Truth.Holds)]
    [InlineData(3, 2, 2, Truth.DoesNotHold)]
    public void Effusion_irritates_when_up_two_grades_or_one_grade_twice(double first, double second, double now, Truth expected) =>
        Assert.Equal(expected, Irritation(Knee.Well.Seen(14, Swollen(first)).Seen(21, Swollen(second)).Seen(28, Swollen(now))));

    [Theory] // Worse from +29.1 mm of 100 on: Danoff 2018. Before: 2 at rest, 3 in activity.
    [InlineData(MeasureIds.PainRest, 4, Truth.DoesNotHold)]
    [InlineData(MeasureIds.PainRest, 5, Truth.Holds)]
    [InlineData(MeasureIds.PainActivity, 5, Truth.DoesNotHold)]
    [InlineData(MeasureIds.PainActivity, 6, Truth.Holds)]
    public void Pain_up_by_3_points_irritates(string pain, double now, Truth expected) =>
        Assert.Equal(expected, Irritation(Ready(Look.Well.With(pain, now))));

    [Theory]
    [InlineData(MeasureIds.Effusion)]
    [InlineData(MeasureIds.PainRest)]
    [InlineData(MeasureIds.PainActivity)]
    [InlineData(Signs.SettledByMorning)]
    public void Irritation_is_not_known_without(string missing) => Assert.Equal(Truth.NotKnown, Irritation(Ready(Look.Well.Without(missing))));

    [Fact]
    public void A_first_visit_has_nothing_to_be_worse_than() =>
        Assert.Equal(Truth.DoesNotHold, Irritation(Knee.Well.Seen(28, Look.Well.With(MeasureIds.Effusion, 4).With(MeasureIds.Girth, 60).With(MeasureIds.PainRest, 6).With(MeasureIds.PainActivity, 10))));

    [Theory] // 1.5 cm, the assumed detectable change of girth; 7 points: common practice. The visit before: 40.1 cm.
    [InlineData(41.5, Truth.DoesNotHold)]
    [InlineData(41.6, Truth.Holds)]
    [InlineData(41.7, Truth.Holds)]
    [InlineData(38, Truth.DoesNotHold)]
    public void Girth_up_by_1_5_cm_irritates(double girth, Truth expected) => Assert.Equal(
        expected, Irritation(Knee.Well.Seen(21, Look.Well.With(MeasureIds.Girth, 40.1)).Seen(28, Look.Well.With(MeasureIds.Girth, girth))));

    [Fact]
    public void Girth_that_was_not_taken_at_both_visits_leaves_it_to_the_grade_of_effusion()
    {
        Look tall = Look.Well.With(MeasureIds.Girth, 60);

        Assert.Equal(Truth.DoesNotHold, Irritation(Ready(tall)));
        Assert.Equal(Truth.DoesNotHold, Irritation(Knee.Well.Seen(21, tall).Seen(28, Look.Well)));
    }

    [Theory] // Severe pain at rest, 7 of 10: common practice. The visit before had 6, so it is no rise of 3 points.
    [InlineData(6, Truth.DoesNotHold)]
    [InlineData(7, Truth.Holds)]
    [InlineData(8, Truth.Holds)]
    public void Severe_pain_at_rest_irritates(double now, Truth expected) =>
        Assert.Equal(expected, Irritation(Knee.Well.Seen(21, Look.Well.With(MeasureIds.PainRest, 6)).Seen(28, Look.Well.With(MeasureIds.PainRest, now))));

    [Theory]
    [InlineData(2, Truth.DoesNotHold)]
    [InlineData(3, Truth.Holds)]
    public void Pain_over_rest_the_next_morning_had_not_settled(double morning, Truth expected) =>
        Assert.Equal(expected, Irritation(Ready(Look.Well.Without(Signs.SettledByMorning).With(MeasureIds.PainNextMorning, morning))));

    [Fact]
    public void Pain_that_had_not_settled_irritates() =>
        Assert.Equal(Truth.Holds, Irritation(Ready(Look.Well.Says(Signs.SettledByMorning, Answer.No))));

    [Theory] // Judged after one week: Spector 2016.
    [InlineData(22, Truth.DoesNotHold)]
    [InlineData(21, Truth.Holds)]
    [InlineData(20, Truth.Holds)]
    public void Response_is_judged_7_days_after_the_first_session(int started, Truth expected) =>
        Assert.Equal(expected, Response(Knee.Well.Stimulated(started).Seen(28, NoContraction)));

    [Theory]
    [InlineData(10, 10, Truth.Holds)]
    [InlineData(10, 9, Truth.Holds)]
    [InlineData(10, 10.1, Truth.DoesNotHold)]
    public void Rising_evoked_torque_is_a_response(double first, double last, Truth expected) =>
        Assert.Equal(expected, Response(Knee.Well.Stimulated(10, evoked: first).Stimulated(20, evoked: last).Seen(28, NoContraction)));

    [Fact]
    public void Response_needs_an_answer_or_two_evoked_torques()
    {
        Knee asked = Knee.Well.Stimulated(10, evoked: 12);

        Assert.Equal(Truth.DoesNotHold, Response(asked.Seen(28, Look.Well)));
        Assert.Equal(Truth.NotKnown, Response(asked.Seen(28, Look.Well.Without(Signs.StimContraction))));
        Assert.Equal(Truth.NotKnown, Response(asked.Stimulated(20, evoked: 12).Seen(28, Look.Well.Without(Signs.StimContraction))));
        Assert.Equal(Truth.DoesNotHold, Response(Knee.Well.Seen(28, NoContraction)));
    }

    [Fact]
    public void Familiarising_ends_with_a_strong_contraction()
    {
        Assert.Equal(Truth.Holds, Familiarised(Knee.Well.Stimulated(2, strong: true)));
        Assert.Equal(Truth.DoesNotHold, Familiarised(Knee.Well.Stimulated(2, strong: false)));
        Assert.Equal(Truth.NotKnown, Familiarised(Knee.Well.Stimulated(2)));
        Assert.Equal(Truth.NotKnown, Familiarised(Knee.Well));
    }

    [Fact]
    public void Familiarising_ends_after_3_sessions_with_a_note()
    {
        Knee two = Knee.Well.Stimulated(2, strong: false).Stimulated(3, strong: false, note: "too early");

        Assert.Equal(Truth.DoesNotHold, Familiarised(two));
        Assert.Equal(Truth.NotKnown, Familiarised(two.Stimulated(4, strong: false)));
        Assert.Equal(Truth.Holds, Familiarised(two.Stimulated(4, strong: false, note: "strong enough to go on")));
        Assert.Equal(Truth.Holds, Familiarised(two.Stimulated(4, strong: false).Stimulated(5, strong: false, note: "goes on")));
    }

    private static Look NoContraction => Look.Well.Says(Signs.StimContraction, Answer.No);

    private static Look Swollen(double grade) => Look.Well.With(MeasureIds.Effusion, grade);

    [Fact]
    public void A_knee_that_stim_does_not_move_is_mended_before_it_is_called_a_plateau()
    {
        Knee knee = Knee.Well.Stimulated(2).Seen(14, Look.Well);

        Assert.Equal(Truth.DoesNotHold, Plateau(knee.Seen(28, Look.Well.Says(Signs.StimContraction, Answer.No))));
        Assert.Equal(Truth.Holds, Plateau(knee.Seen(28, Look.Well.Without(Signs.StimContraction))));
        Assert.Equal("LADDER-RESPONSE", knee.Seen(28, Look.Well.Lag(9).Says(Signs.StimContraction, Answer.No)).Judge(Rung.HighVolume, 4).DecidedBy.Id);
    }

    private static Truth Plateau(Knee knee) => LadderRules.StopPlateau.Apply(knee.Facts(Rung.Reduced, 14)).Truth;

    private static Truth Back(Knee knee) => LadderRules.StepBack.Apply(knee.Facts(Rung.Reduced, 14)).Truth;

    private static Truth Irritation(Knee knee) => LadderRules.Irritation.Apply(knee.Facts(Rung.Reduced, 14)).Truth;

    private static Truth Response(Knee knee) => LadderRules.Response.Apply(knee.Facts(Rung.HighVolume, 14)).Truth;

    private static Truth Familiarised(Knee knee) => LadderRules.Familiarised.Apply(knee.Seen(6, Look.Well).Facts(Rung.Familiarise, 2)).Truth;
}
