using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.Core.Tests.Measures;

/// <summary>Two readings of one measure. Figures are the papers' unless marked [C], computed from theirs.</summary>
public sealed class ChangesTests
{
    private const string Walk = "six_minute_walk";
    private const string UpAndGo = "timed_up_and_go";
    private const string KneeScore = "oxford_knee_score";
    private const string LegScore = "lower_extremity_score";

    [Theory] // Worked example 17: lag 12 to 4 with errors 3 and 3; detectable 9.87 uncorrelated, 6.98 at 0.5 [C].
    [InlineData(0, ChangeClass.NoDetectableChange, 9.87)]
    [InlineData(0.5, ChangeClass.Improved, 6.98)]
    public void Eight_degrees_of_lag_are_real_only_with_shared_error(double correlation, ChangeClass expected, double detectable)
    {
        Change change = Lag(12, 4, Knee.LibraryWith(LimitIds.LagErrorCorrelation, correlation));

        Assert.Equal(expected, change.Class);
        Assert.Equal(detectable, change.Detectable!.Value, 5e-3);
    }

    [Fact] // Part 5.2 [C]: 11.76 at 95 %; with errors of 2 and 2, 6.58 at 90 %.
    public void Detectable_lag_follows_level_and_errors()
    {
        ClinicalLibrary fine = Visit.Library(MeasureIds.ExtensionActive, one => one with { StandardError = 2 });
        fine = fine with { Measures = fine.Measures.SetItem(MeasureIds.ExtensionPassive, fine.Measures[MeasureIds.ExtensionPassive] with { StandardError = 2 }) };

        Assert.Equal(11.76, Lag(12, 4, Knee.LibraryWith(LimitIds.ChangeLevel, 95)).Detectable!.Value, 5e-3);
        Assert.Equal(6.58, Lag(12, 4, fine).Detectable!.Value, 5e-3);
    }

    [Theory] // Gotlin 1994: 7.5 to 5.7 and 5.3 to 8.3 are group means; within one person neither is detectable.
    [InlineData(7.5, 5.7, ChangeClass.NoDetectableChange)]
    [InlineData(5.3, 8.3, ChangeClass.NoDetectableChange)]
    [InlineData(3, 12.86, ChangeClass.NoDetectableChange)] // 9.86 < 9.87
    [InlineData(3, 12.88, ChangeClass.Worse)]
    [InlineData(12.88, 3, ChangeClass.Improved)]
    public void Lag_changes_against_its_own_error(double old, double now, ChangeClass expected) => Assert.Equal(expected, Lag(old, now, Knee.Library).Class);

    [Theory] // Worked example 9: timed up and go, 36.7 % at 95 % is 0.1128 on the logarithm (Naylor 2014).
    [InlineData(10.0, 13.5, ChangeClass.NoDetectableChange)]
    [InlineData(10.0, 14.0, ChangeClass.Worse)]
    [InlineData(14.0, 10.0, ChangeClass.Improved)]
    [InlineData(10.0, 10.0, ChangeClass.NoDetectableChange)]
    public void Logarithmic_scale_compares_ratios(double old, double now, ChangeClass expected) =>
        Assert.Equal(expected, Visit.Change(UpAndGo, old, now, Visit.Library(UpAndGo, one => one with { StandardError = 0.1128 }, 95)).Class);

    [Fact] // exp(0.3126) = 1.367: from 10 s up 3.67 s, and down 10 - 10/1.367 = 2.685 s [C].
    public void Detectable_change_on_the_logarithmic_scale_is_told_in_the_unit_and_the_direction_moved()
    {
        ClinicalLibrary library = Visit.Library(UpAndGo, one => one with { StandardError = 0.1128 }, 95);

        Assert.Equal(3.67, Visit.Change(UpAndGo, 10, 11, library).Detectable!.Value, 5e-3);
        Assert.Equal(2.685, Visit.Change(UpAndGo, 10, 9, library).Detectable!.Value, 5e-3);
    }

    [Theory]
    [InlineData(MeasureIds.QuadricepsTorque, 0, 20)]
    [InlineData(MeasureIds.QuadricepsTorque, 20, 0)]
    public void A_ratio_from_or_to_nothing_is_not_classed(string measure, double old, double now)
    {
        Change change = Visit.Change(measure, old, now);

        Assert.Equal((null, "?", "not classed"), (change.Class, change.Mark, change.Words));
        Assert.Contains("no ratio", change.WhyNot, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(KneeScore, 24, 29, "improved, not shown to be important")] // example 11, Beard 2015: 5 is over 4 and under 7
    [InlineData(KneeScore, 24, 28, "improved, not shown to be important")] // 4 is the published detectable change itself
    [InlineData(KneeScore, 24, 27, "no detectable change")]
    [InlineData(KneeScore, 24, 31, "improved, likely important")]
    [InlineData(LegScore, 40, 47, "no detectable change")] // example 12, Binkley 1999: 7 < 9
    [InlineData(LegScore, 40, 49, "improved, likely important")] // 9 is both figures
    [InlineData(Walk, 380, 420, "no detectable change, could be important: re-measure")] // 40 m is over 26 (Naylor 2016) and under 66.3 (Naylor 2014)
    [InlineData(MeasureIds.PainRest, 3, 6, "worse, likely important")] // example 31, Danoff 2018: 30 mm is over 29.1
    [InlineData(MeasureIds.PainRest, 6, 4, "no detectable change, could be important: re-measure")] // 2 points, from memory; 3 are taken for real
    [InlineData("koos_jr", 50, 60, "not classed, could be important: re-measure")] // no detectable change could be seen; 6.8 is important
    [InlineData("koos_jr", 50, 55, "not classed")]
    [InlineData("chair_stands", 8, 10, "no detectable change")] // 2 are under the 3 that are asked for
    [InlineData("chair_stands", 8, 11, "improved, likely important")] // Wright 2011: 2.6
    [InlineData("girth", 42.0, 40.4, "improved")] // 1.5 cm, assumed
    [InlineData("stairs_up_and_down", 20.0, 17.3, "improved")] // Almeida 2010: 2.65 s, printed as 2.6
    [InlineData("gait_speed", 1.0, 1.1, "no detectable change")] // 0.135 m/s at 90 %
    public void Class_and_importance_are_two_things(string measure, double old, double now, string words) =>
        Assert.Equal(words, Visit.Change(measure, old, now).Words);

    [Theory] // Example 14: 380 to 420 m, the same day (Jakobsen 2013) and between days (Naylor 2014).
    [InlineData(13.0, 380, 420, ChangeClass.Improved)]
    [InlineData(28.50, 380, 420, ChangeClass.NoDetectableChange)]
    [InlineData(28.50, 420, 340, ChangeClass.Worse)]
    public void The_setting_decides_what_is_a_change(double standardError, double old, double now, ChangeClass expected) =>
        Assert.Equal(expected, Visit.Change(Walk, old, now, Visit.Library(Walk, one => one with { StandardError = standardError }, 95)).Class);

    [Fact]
    public void Nothing_is_said_without_an_error()
    {
        Change change = Visit.Change(Walk, 100, 400, Visit.Library(Walk, one => one with { StandardError = null, ImportantGain = null }));

        Assert.Equal((null, null, "not classed"), (change.Class, change.Detectable, change.Words));
        Assert.Equal("the error of this measure is not known", change.WhyNot);
    }

    [Fact]
    public void Steps_without_a_real_step_are_not_classed() =>
        Assert.Contains("real step", Visit.Change(MeasureIds.StraightLegRaises, 0, 10).WhyNot, StringComparison.Ordinal);

    [Theory] // 0.6 of 9.87 deg is 5.92 deg; assumed.
    [InlineData(3, 8.9, false)]
    [InlineData(3, 8.95, true)]
    [InlineData(8.95, 3, false)]
    public void Possible_worsening_is_told_before_it_is_proved(double old, double now, bool possibly)
    {
        Change change = Lag(old, now, Knee.Library);

        Assert.Equal((ChangeClass.NoDetectableChange, possibly), (change.Class, change.PossiblyWorse));
        Assert.Equal(possibly ? ("possible worsening", "!") : ("no detectable change", "~"), (change.Words, change.Mark));
    }

    [Fact] // Part 1.3 [C]: 36.2 % carries 5.1 points; the ratio has to reach exp(2.326 x 0.1414) = 1.389.
    public void The_index_is_classed_by_the_error_of_both_legs()
    {
        Change change = Index(36.2, 50);

        Assert.Equal(14.1, change.Detectable!.Value, 0.05);
        Assert.Equal(ChangeClass.NoDetectableChange, change.Class);
        Assert.Equal(ChangeClass.Improved, Index(36.2, 71.9).Class); // Marcus 2011
        Assert.Contains(change.Inputs, input => input.Value.StartsWith("14.1 % of the value (5.12 %)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_share_of_pre_op_is_classed_as_the_torque_it_comes_from()
    {
        Change torque = Visit.Change(MeasureIds.QuadricepsTorque, 40, 51);
        KneeState old = Visit.With(7, MeasureIds.QuadricepsTorque, 40).State(), now = Visit.With(28, MeasureIds.QuadricepsTorque, 51).State();
        Change share = Changes.Between(old, now, MeasureIds.PreOpShare, Knee.Library)!; // pre-op 100 Nm

        Assert.Equal(torque.Class, share.Class);
        Assert.Equal(torque.Detectable!.Value, share.Detectable!.Value, 1e-9);
    }

    [Fact]
    public void Passive_flexion_is_not_compared_with_active() =>
        Assert.Null(Changes.Between(Visit.With(7, MeasureIds.FlexionPassive, 80).State(), Visit.With(28, MeasureIds.FlexionActive, 95).State(), MeasureIds.FlexionActive, Knee.Library));

    [Theory]
    [InlineData(MeasureIds.FlexionActive, 80, 95)]
    [InlineData(MeasureIds.FlexionActive, 80, 84)]
    [InlineData(MeasureIds.QuadricepsTorque, 40, 70)]
    [InlineData(MeasureIds.PainActivity, 2, 6)]
    [InlineData(UpAndGo, 9, 17)]
    [InlineData(KneeScore, 20, 33)]
    public void Swapping_old_and_new_swaps_improved_and_worse(string measure, double one, double other)
    {
        ChangeClass? there = Visit.Change(measure, one, other).Class, back = Visit.Change(measure, other, one).Class;

        Assert.Equal(there switch { ChangeClass.Improved => ChangeClass.Worse, ChangeClass.Worse => ChangeClass.Improved, _ => ChangeClass.NoDetectableChange }, back);
    }

    [Fact]
    public void Swapping_the_legs_swaps_the_answer_of_the_index()
    {
        Random numbers = new(20261125);
        for (int pair = 0; pair < 200; pair++)
        {
            (double operatedThen, double otherThen, double operatedNow, double otherNow) = (Torque(), Torque(), Torque(), Torque());
            ChangeClass? there = Index((operatedThen, otherThen), (operatedNow, otherNow)), swapped = Index((otherThen, operatedThen), (otherNow, operatedNow));

            Assert.NotNull(there);
            Assert.Equal(there switch { ChangeClass.Improved => ChangeClass.Worse, ChangeClass.Worse => ChangeClass.Improved, _ => ChangeClass.NoDetectableChange }, swapped);
        }

        double Torque() => 30 + (numbers.NextDouble() * 120);
    }

    private static ChangeClass? Index((double Operated, double Other) then, (double Operated, double Other) now) => Changes.Between(
        KneeState.At(Legs(then).On(7), Knee.Well.Case), KneeState.At(Legs(now).On(28), Knee.Well.Case), MeasureIds.Index, Knee.Library)!.Class;

    private static Look Legs((double Operated, double Other) legs) => Look.Empty.With(MeasureIds.QuadricepsTorque, legs.Operated).With(MeasureIds.OtherTorque, legs.Other);

    [Fact]
    public void The_answer_can_say_why()
    {
        Change change = Visit.Change(MeasureIds.FlexionActive, 80, 95);

        Assert.Equal(["80 deg", "95 deg", "4 deg and 4 deg", "1.645", "2.65", "9.3 deg"], change.Inputs.Select(input => input.Value)); // 15 / (4 x 1.4142); 4 x 2.326174
        Assert.Equal(Standing.FromMemory, change.Source.Standing);
        Assert.True(change.IsBetter);
    }

    private static Change Lag(double old, double now, ClinicalLibrary library) =>
        Changes.Between(Extension(7, old), Extension(28, now), MeasureIds.Lag, library)!;

    private static KneeState Extension(int day, double lag) => Visit.With(day, MeasureIds.ExtensionPassive, 1).With(MeasureIds.ExtensionActive, 1 + lag).State();

    private static Change Index(double old, double now) => Changes.Between(Legs(7, old), Legs(28, now), MeasureIds.Index, Knee.Library)!;

    private static KneeState Legs(int day, double operated) => Visit.With(day, MeasureIds.QuadricepsTorque, operated).With(MeasureIds.OtherTorque, 100).State();
}
