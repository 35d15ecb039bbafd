using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>The strength gates. Their percentages are common practice, set against the derived recovery curve; no trial tested them.</summary>
public sealed partial class LadderRulesTests
{
    [Theory] // Detectably up at 90 % with 10 % error on the logarithm: from 50 to 50 x exp(0.2326) = 63.10 Nm [C].
    [InlineData(50, Truth.DoesNotHold)]
    [InlineData(63.0, Truth.DoesNotHold)]
    [InlineData(63.2, Truth.Holds)]
    public void High_volume_is_left_on_a_detectable_gain_since_the_first_test(double torque, Truth expected) =>
        Assert.Equal(expected, Down(Ready(Look.Well.With(MeasureIds.QuadricepsTorque, torque)).OtherIs(OtherKnee.Painful), Rung.HighVolume));

    [Fact]
    public void The_first_strength_test_is_no_gain() =>
        Assert.Equal(Truth.DoesNotHold, Down(
            Knee.Well.OtherIs(OtherKnee.Painful).Seen(21, Look.Well.Without(MeasureIds.QuadricepsTorque)).Seen(28, Look.Well), Rung.HighVolume));

    [Fact]
    public void A_gain_is_not_known_where_the_error_of_strength_is_not() =>
        Assert.Equal(Truth.NotKnown, Down(
            Ready(Look.Well.With(MeasureIds.QuadricepsTorque, 90)).OtherIs(OtherKnee.Painful), Rung.HighVolume, library: WithoutStrengthError));

    [Theory]
    [InlineData(Rung.HighVolume, 39.9, 100, Truth.DoesNotHold)]
    [InlineData(Rung.HighVolume, 40, 100, Truth.Holds)]
    [InlineData(Rung.HighVolume, 40.1, 100, Truth.Holds)]
    [InlineData(Rung.Reduced, 44, 88.2, Truth.DoesNotHold)] // 49.9 %
    [InlineData(Rung.Reduced, 44, 88, Truth.Holds)] // 50 %
    [InlineData(Rung.LowVolume, 44, 80.2, Truth.DoesNotHold)] // 54.9 %
    [InlineData(Rung.LowVolume, 44, 80, Truth.Holds)] // 55 %
    public void The_index_opens_the_gate_where_the_share_of_pre_op_does_not(Rung rung, double torque, double other, Truth expected) =>
        Assert.Equal(expected, Down(Ready(Look.Well.With(MeasureIds.QuadricepsTorque, torque).With(MeasureIds.OtherTorque, other)), rung));

    [Theory]
    [InlineData(Rung.Reduced, 44.9, Truth.DoesNotHold)]
    [InlineData(Rung.Reduced, 45, Truth.Holds)]
    [InlineData(Rung.Reduced, 45.1, Truth.Holds)]
    [InlineData(Rung.LowVolume, 54.9, Truth.DoesNotHold)]
    [InlineData(Rung.LowVolume, 55, Truth.Holds)]
    [InlineData(Rung.LowVolume, 55.1, Truth.Holds)]
    public void The_share_of_pre_op_opens_the_gate_where_the_index_does_not_count(Rung rung, double torque, Truth expected) =>
        Assert.Equal(expected, Down(Ready(Look.Well.With(MeasureIds.QuadricepsTorque, torque)).OtherIs(OtherKnee.Painful), rung));

    [Theory]
    [InlineData(OtherKnee.Painful, Truth.DoesNotHold)]
    [InlineData(OtherKnee.Operated, Truth.DoesNotHold)]
    [InlineData(OtherKnee.NotKnown, Truth.NotKnown)]
    [InlineData(OtherKnee.Sound, Truth.Holds)]
    public void An_index_counts_only_against_a_sound_knee(OtherKnee other, Truth expected) =>
        Assert.Equal(expected, Down(Ready(Look.Well.With(MeasureIds.QuadricepsTorque, 44).With(MeasureIds.OtherTorque, 50)).OtherIs(other)));

    [Fact]
    public void A_knee_nobody_asked_about_is_asked_about() =>
        Assert.Contains(
            "say whether the other knee is sound; only then does the index count",
            Ready(Look.Well.With(MeasureIds.QuadricepsTorque, 44)).OtherIs(OtherKnee.NotKnown).Judge(Rung.Reduced, 14).ToMeasure);

    [Fact]
    public void Without_a_pre_op_value_only_the_index_can_open_the_gate()
    {
        Assert.Equal(Truth.Holds, Down(Ready(Look.Well).WithoutPreOp()));
        Assert.Equal(Truth.NotKnown, Down(Ready(Look.Well.With(MeasureIds.OtherTorque, 110)).WithoutPreOp()));
    }

    [Fact]
    public void One_branch_is_enough_when_the_other_is_not_known() =>
        Assert.Equal(Truth.Holds, Down(Look.Well.Without(MeasureIds.OtherTorque)));

    [Theory]
    [InlineData(54.9, 100, Truth.DoesNotHold)]
    [InlineData(55, 100, Truth.Holds)]
    [InlineData(50, 91, Truth.DoesNotHold)] // index 54.9 %
    [InlineData(50, 90.9, Truth.Holds)] // index 55.0 %
    public void Stim_stops_at_55_percent_of_either(double torque, double other, Truth expected) =>
        Assert.Equal(expected, Stop(Look.Well.With(MeasureIds.QuadricepsTorque, torque).With(MeasureIds.OtherTorque, other)));

    [Theory]
    [InlineData(Rung.HighVolume)]
    [InlineData(Rung.Reduced)]
    [InlineData(Rung.LowVolume)]
    public void Stim_stops_from_any_rung_once_its_criterion_is_met(Rung rung)
    {
        LadderVerdict verdict = Ready(Strong).Judge(rung, 27);

        Assert.Equal(LadderOutcome.Stop, verdict.Outcome);
        Assert.Equal(Rung.Stopped, verdict.To);
        Assert.Equal("LADDER-STOP-MET", verdict.DecidedBy.Id);
    }

    [Fact]
    public void Eighty_percent_is_never_asked_for() =>
        Assert.Equal(Truth.Holds, Stop(Look.Well.With(MeasureIds.QuadricepsTorque, 56).With(MeasureIds.OtherTorque, 100)));

    [Fact]
    public void Stop_asks_for_the_lag_the_passive_deficit_and_the_flags_too()
    {
        Assert.Equal(Truth.DoesNotHold, Stop(Strong.Lag(5.1)));
        Assert.Equal(Truth.DoesNotHold, Stop(Strong.With(MeasureIds.ExtensionPassive, 5.1).Lag(2)));
        Assert.Equal(Truth.DoesNotHold, Stop(Strong.Says(Signs.ClotSigns, Answer.Yes)));
        Assert.Equal(Truth.NotKnown, Stop(Strong.Without(Signs.ClotSigns)));
        Assert.Equal(Truth.NotKnown, Stop(Strong.Without(MeasureIds.ExtensionActive)));
        Assert.Equal(Truth.NotKnown, Stop(Strong.Without(MeasureIds.QuadricepsTorque)));
    }

    private static Look Strong => Look.Well.With(MeasureIds.QuadricepsTorque, 60);

    private static ClinicalLibrary WithoutStrengthError => Knee.Library with
    {
        Measures = Knee.Library.Measures.SetItem(
            MeasureIds.QuadricepsTorque, Knee.Library.Measures[MeasureIds.QuadricepsTorque] with { StandardError = null }),
    };

    private static Truth Stop(Look now) => LadderRules.StopMet.Apply(Ready(now).Facts(Rung.LowVolume, 14)).Truth;
}
