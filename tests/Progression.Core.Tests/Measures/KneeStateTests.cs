using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Tests.Measures;

public sealed class KneeStateTests
{
    [Theory] // Lag is active minus passive deficit, flexion-positive; the first three are worked examples of the project's reference (parts 5.2 and 7).
    [InlineData(8, 2, 6)]
    [InlineData(10, 3, 7)]
    [InlineData(-1, -4, 3)] // hyperextends less actively than passively
    [InlineData(3, 1, 2)]
    [InlineData(0, 0, 0)]
    [InlineData(10.3, 5.3, 5)] // exactly at the limit, although the binary fractions differ
    [InlineData(0, 2, -2)] // an entry to be looked at
    public void Lag_is_active_minus_passive_deficit(double active, double passive, double lag) =>
        Assert.Equal(lag, State(Look.Empty.With(MeasureIds.ExtensionActive, active).With(MeasureIds.ExtensionPassive, passive)).Lag!.Degrees);

    [Theory]
    [InlineData(MeasureIds.ExtensionActive)]
    [InlineData(MeasureIds.ExtensionPassive)]
    public void Lag_is_not_known_when_one_deficit_was_not_measured(string missing)
    {
        KneeState state = State(Look.Well.Without(missing));

        Assert.Null(state.Lag);
        Assert.Null(state.Value(MeasureIds.Lag));
    }

    [Theory] // Marcus 2011, 10.1155/2011/353149: operated and other leg, before and after a trained programme.
    [InlineData(52.9, 146.3, 36.2)]
    [InlineData(109.6, 152.5, 71.9)]
    [InlineData(58, 100, 58)] // 42 % under the other side, Vuorenmaa 2008
    public void Index_is_the_operated_leg_in_percent_of_the_other(double operated, double other, double index) =>
        Assert.Equal(index, State(Look.Well.With(MeasureIds.QuadricepsTorque, operated).With(MeasureIds.OtherTorque, other)).Index!.Percent, 0.05);

    [Theory]
    [InlineData(OtherKnee.Painful)]
    [InlineData(OtherKnee.Operated)]
    [InlineData(OtherKnee.NotKnown)]
    public void Another_knee_that_is_not_known_to_be_sound_gives_no_index(OtherKnee other)
    {
        KneeState state = State(Look.Well, Knee.Well.OtherIs(other));

        Assert.Null(state.Index);
        Assert.Equal(100, state.OtherStrength!.NewtonMetres);
    }

    [Theory]
    [InlineData(MeasureIds.QuadricepsTorque)]
    [InlineData(MeasureIds.OtherTorque)]
    public void Index_is_not_known_with_one_leg_only(string missing) => Assert.Null(State(Look.Well.Without(missing)).Index);

    [Fact]
    public void A_leg_without_any_torque_is_no_yardstick() => Assert.Null(State(Look.Well.With(MeasureIds.OtherTorque, 0)).Index);

    [Fact] // 75.8 of 100 before: 24.2 % lost at 3 weeks, Stevens-Lapsley 2009.
    public void Share_of_pre_op_is_of_the_same_leg() =>
        Assert.Equal(75.8, State(Look.Well.With(MeasureIds.QuadricepsTorque, 75.8)).PreOpShare!.Percent, 1e-9);

    [Fact]
    public void Share_of_pre_op_is_not_known_when_nothing_was_measured_before() =>
        Assert.Null(State(Look.Well, Knee.Well.WithoutPreOp()).PreOpShare);

    [Fact] // Torque is force times lever arm: 200 N at 30 cm is 60 Nm.
    public void Torque_comes_from_force_and_lever_arm() =>
        Assert.Equal(60, State(Look.Empty.With(MeasureIds.QuadricepsForce, 200).With(MeasureIds.LeverArm, 30)).Strength!.NewtonMetres, 1e-9);

    [Fact]
    public void Torque_as_measured_wins_over_force_and_lever_arm() =>
        Assert.Equal(50, State(Look.Well.With(MeasureIds.QuadricepsForce, 200).With(MeasureIds.LeverArm, 30)).Strength!.NewtonMetres);

    [Fact]
    public void Force_without_a_lever_arm_is_no_torque() =>
        Assert.Null(State(Look.Empty.With(MeasureIds.QuadricepsForce, 200)).Strength);

    [Fact]
    public void Passive_flexion_stands_in_where_active_was_not_measured()
    {
        Assert.Equal(104, State(Look.Empty.With(MeasureIds.FlexionPassive, 104)).Flexion!.Degrees);
        Assert.Equal(100, State(Look.Well.With(MeasureIds.FlexionPassive, 104)).Flexion!.Degrees);
        Assert.Null(State(Look.Empty).Flexion);
    }

    [Theory] // Post-op week n is days 7(n-1) to 7n-1.
    [InlineData(0, 1)]
    [InlineData(6, 1)]
    [InlineData(7, 2)]
    [InlineData(27, 4)]
    [InlineData(-1, 0)]
    public void Week_is_counted_from_the_operation(int day, int week) =>
        Assert.Equal(week, KneeState.At(Look.Empty.On(day), Knee.Well.Case).Week);

    [Fact]
    public void Missing_is_never_zero()
    {
        KneeState state = State(Look.Empty);

        Assert.All(MeasureIds.All, measure => Assert.Null(state.Value(measure)));
    }

    private static KneeState State(Look look, Knee? knee = null) => KneeState.At(look.On(21), (knee ?? Knee.Well).Case);
}
