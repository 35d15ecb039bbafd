using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>Each need of an exercise just on either side of its limit, and not known. An exercise is made for each test from one of the library.</summary>
public sealed class AdmissionTests
{
    private static readonly Exercise Easy = Knee.Library.Exercises["quad-set"];

    [Fact]
    public void An_exercise_without_needs_is_always_admitted() => Assert.Equal(Truth.Holds, Admitted(new ExerciseNeeds(), Look.Empty));

    [Theory]
    [InlineData(9.9, Truth.Holds)]
    [InlineData(10, Truth.Holds)]
    [InlineData(10.1, Truth.DoesNotHold)]
    public void Lag_at_most(double lag, Truth expected) =>
        Assert.Equal(expected, Admitted(new ExerciseNeeds { LagAtMost = Angle.FromDegrees(10) }, Look.Well.Lag(lag)));

    [Theory]
    [InlineData(89.9, Truth.DoesNotHold)]
    [InlineData(90, Truth.Holds)]
    [InlineData(90.1, Truth.Holds)]
    public void Flexion_at_least(double flexion, Truth expected) =>
        Assert.Equal(expected, Admitted(new ExerciseNeeds { FlexionAtLeast = Angle.FromDegrees(90) }, Look.Well.With(MeasureIds.FlexionActive, flexion)));

    [Theory]
    [InlineData(79.9, Truth.DoesNotHold)]
    [InlineData(80, Truth.Holds)]
    public void Index_at_least(double torque, Truth expected) =>
        Assert.Equal(expected, Admitted(new ExerciseNeeds { IndexAtLeast = Percentage.FromPercent(80) }, Look.Well.With(MeasureIds.QuadricepsTorque, torque)));

    [Theory]
    [InlineData(1, Truth.DoesNotHold)]
    [InlineData(2, Truth.Holds)]
    [InlineData(3, Truth.Holds)]
    public void Week_at_least(int week, Truth expected) =>
        Assert.Equal(expected, Admission(Knee.Well).Truth(Easy with { Id = "made", Needs = new ExerciseNeeds { WeekAtLeast = 2 } }, week));

    [Theory]
    [InlineData(Answer.Yes, Truth.Holds)]
    [InlineData(Answer.No, Truth.DoesNotHold)]
    [InlineData(Answer.Unknown, Truth.NotKnown)]
    public void Signs_are_asked_for(Answer answer, Truth expected)
    {
        Assert.Equal(expected, Admitted(new ExerciseNeeds { ContractionVisible = true }, Look.Well.Says(Signs.ContractionVisible, answer), week: 1));
        Assert.Equal(expected, Admitted(new ExerciseNeeds { StraightLegRaise = true }, Look.Well.Says(Signs.StraightLegRaise, answer), week: 1));
    }

    [Theory]
    [InlineData(WeightBearing.None, Truth.DoesNotHold)]
    [InlineData(WeightBearing.Touch, Truth.DoesNotHold)]
    [InlineData(WeightBearing.Partial, Truth.Holds)]
    [InlineData(WeightBearing.Full, Truth.Holds)]
    [InlineData(null, Truth.NotKnown)]
    public void Load_is_what_the_surgeon_allows(WeightBearing? allowed, Truth expected)
    {
        Exercise exercise = Easy with { Needs = new ExerciseNeeds { WeightBearingAtLeast = WeightBearing.Partial } };

        Judged judged = Assert.Single(Admission(Knee.Well.Bearing(allowed)).Judge(exercise, 1));

        Assert.Equal(expected, judged.Truth);
        Assert.Equal(expected == Truth.NotKnown, judged.Missing is not null);
    }

    [Theory]
    [InlineData(89, Truth.DoesNotHold)]
    [InlineData(90, Truth.Holds)]
    public void The_surgeons_flexion_limit_bounds_how_far_an_exercise_bends(double most, Truth expected)
    {
        Knee knee = new(Knee.Well.Seen(7, Look.Well).Case with { Surgeon = new SurgeonLimits { FlexionAtMost = Angle.FromDegrees(most) } });

        Assert.Equal(expected, Admission(knee).Truth(Easy with { Needs = new ExerciseNeeds { FlexionAtLeast = Angle.FromDegrees(90) } }, 2));
    }

    [Theory] // Week 3 starts on day 14.
    [InlineData(13, Truth.Holds)]
    [InlineData(14, Truth.Holds)]
    [InlineData(15, Truth.DoesNotHold)]
    public void Resistance_waits_for_the_surgeons_day(int from, Truth expected)
    {
        Knee knee = new(Knee.Well.Case with { Surgeon = new SurgeonLimits { NoResistanceBefore = Knee.Day(from) } });

        Assert.Equal(expected, Admission(knee).Truth(Easy with { Resisted = true }, 3));
        Assert.Equal(Truth.Holds, Admission(knee).Truth(Easy, 3));
    }

    [Theory]
    [InlineData(MeasureIds.ExtensionPassive, "measure: extension lag")]
    [InlineData(MeasureIds.FlexionActive, "measure: flexion")]
    [InlineData(MeasureIds.QuadricepsTorque, "measure: quadriceps index")]
    public void What_is_missing_is_named(string missing, string asked)
    {
        ExerciseNeeds needs = new() { LagAtMost = Angle.FromDegrees(10), FlexionAtLeast = Angle.FromDegrees(90), IndexAtLeast = Percentage.FromPercent(10) };

        Judged open = Assert.Single(
            Admission(Knee.Well.Seen(7, Look.Well.Without(missing))).Judge(Easy with { Needs = needs }, 2), judged => judged.Truth == Truth.NotKnown);

        Assert.Equal(asked, open.Missing);
    }

    [Fact]
    public void A_later_week_may_rest_on_the_milestones()
    {
        Admission admission = Admission(Knee.Well.Seen(7, Look.Well.Lag(10)));
        Exercise exercise = Easy with { Needs = new ExerciseNeeds { LagAtMost = Angle.FromDegrees(5) } };

        Assert.Equal(Truth.DoesNotHold, admission.Truth(exercise, 2));
        Assert.Equal(Truth.Holds, admission.Truth(exercise, 3));
    }

    private static Truth Admitted(ExerciseNeeds needs, Look look, int week = 2) => Admission(Knee.Well.Seen(week == 1 ? 2 : 7, look)).Truth(Easy with { Needs = needs }, week);

    private static Admission Admission(Knee knee) => new(knee.Case, new ExpectedCourse(knee.Case, Knee.Library, Knee.Day(180)));
}
