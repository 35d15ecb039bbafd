using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Measures;

public sealed class ComparisonTests
{
    [Fact]
    public void Visits_are_told_with_the_one_before_the_operation_first()
    {
        Comparison comparison = Of(Knee.Well.Seen(7, Look.Well).Seen(21, Look.Well));

        Assert.Equal([Knee.Day(-7), Knee.Day(7), Knee.Day(21)], comparison.Visits);
        Assert.True(comparison.HasPreOp);
        Assert.False(Of(Knee.Well.WithoutPreOp().Seen(7, Look.Well)).HasPreOp);
    }

    [Fact]
    public void Measures_come_in_the_order_of_the_library_and_only_where_measured()
    {
        Look look = Look.Empty.With("chair_stands", 9).With(MeasureIds.QuadricepsForce, 200).With(MeasureIds.LeverArm, 30).With(MeasureIds.FlexionActive, 90);

        // Torque and share follow from force and lever arm; the lever arm is no result.
        Assert.Equal(
            [MeasureIds.FlexionActive, MeasureIds.QuadricepsTorque, MeasureIds.QuadricepsForce, MeasureIds.PreOpShare, "chair_stands"],
            Of(Knee.Well.Seen(7, look)).Rows.Select(row => row.Measure.Id));
    }

    [Fact]
    public void What_was_not_measured_has_no_value()
    {
        ComparisonRow row = Row(Knee.Well.Seen(7, Look.Well).Seen(14, Look.Empty).Seen(21, Look.Well.With(MeasureIds.FlexionActive, 112)), MeasureIds.FlexionActive);

        Assert.Equal([null, 100, null, 112], row.Values);
        Assert.Equal((Knee.Day(7), Knee.Day(21)), (row.Last!.From, row.Last.To));
    }

    [Fact]
    public void Changes_are_told_since_the_operation()
    {
        ComparisonRow row = Row(Knee.Well.Seen(7, Look.Well), MeasureIds.QuadricepsTorque);

        Assert.Equal([100, 50], row.Values);
        Assert.Null(row.Last);
        Assert.Null(row.SinceFirst);
    }

    [Fact]
    public void The_last_step_and_the_whole_way_can_differ()
    {
        ComparisonRow row = Row(
            Knee.Well.Seen(7, Look.Well.With(MeasureIds.FlexionActive, 80)).Seen(14, Look.Well.With(MeasureIds.FlexionActive, 88)).Seen(21, Look.Well.With(MeasureIds.FlexionActive, 96)),
            MeasureIds.FlexionActive);

        Assert.Equal(ChangeClass.NoDetectableChange, row.Last!.Class); // 8 < 9.30
        Assert.Equal(ChangeClass.Improved, row.SinceFirst!.Class);
    }

    [Theory] // Part 5.1 [C].
    [InlineData(0, 90, "")]
    [InlineData(1, 90, "")]
    [InlineData(6, 90, "6 measures tested at 90 %: about 47 in 100 that at least one differs by chance alone.")]
    [InlineData(6, 95, "6 measures tested at 95 %: about 26 in 100 that at least one differs by chance alone.")]
    public void False_alarms_are_told(int tested, double level, string sentence) => Assert.Equal(sentence, Comparison.Alarm(tested, level));

    [Fact] // Flexion, two extensions, two torques were taken: 1 - 0.9^5 = 41 %. Lag, share and index bring nothing of their own; steps are not tested at a level.
    public void False_alarms_count_what_was_taken() =>
        Assert.StartsWith("5 measures tested at 90 %: about 41 in 100", Of(Knee.Well.Seen(7, Look.Well).Seen(21, Look.Well)).FalseAlarm, StringComparison.Ordinal);

    [Fact] // 50 Nm and 80 kg.
    public void Torque_per_body_mass_is_worked_out_where_it_was_not_entered()
    {
        Knee knee = Knee.Well.Seen(7, Look.Well) is var seen ? new Knee(seen.Case with { BodyMass = Mass.FromKilograms(80) }) : Knee.Well;

        Assert.Equal(0.625, Row(knee, MeasureIds.TorquePerMass).Values[1]);
        Assert.Equal(0.7, KneeState.At(Look.Well.With(MeasureIds.TorquePerMass, 0.7).On(7), knee.Case).TorquePerMass);
        Assert.Null(KneeState.At(Look.Well.On(7), Knee.Well.Case).TorquePerMass);
    }

    [Fact]
    public void Nobody_measured_is_an_empty_table() => Assert.Empty(Of(Knee.Well.WithoutPreOp()).Rows);

    private static Comparison Of(Knee knee) => Comparison.Of(knee.Case, Knee.Library);

    private static ComparisonRow Row(Knee knee, string measure) => Of(knee).Rows.Single(row => row.Measure.Id == measure);
}
