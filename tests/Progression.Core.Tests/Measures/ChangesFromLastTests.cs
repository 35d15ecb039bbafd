using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.Core.Tests.Measures;

/// <summary>The last visit against those before it.</summary>
public sealed class ChangesFromLastTests
{
    [Fact]
    public void One_visit_has_nothing_to_be_compared_with() => Assert.Null(Visit.Last(MeasureIds.FlexionActive, 80));

    [Fact]
    public void A_visit_without_the_measure_has_no_change_of_it() =>
        Assert.Null(Changes.FromLast([Visit.With(7, MeasureIds.FlexionActive, 80).State(), Visit.On(14).State()], MeasureIds.FlexionActive, Knee.Library));

    [Fact]
    public void The_latest_earlier_visit_that_has_the_measure_counts()
    {
        Change change = Changes.FromLast(
            [Visit.With(7, MeasureIds.FlexionActive, 60).State(), Visit.With(14, MeasureIds.FlexionActive, 80).State(), Visit.On(18).State(), Visit.With(21, MeasureIds.FlexionActive, 95).State()],
            MeasureIds.FlexionActive, Knee.Library)!;

        Assert.Equal((Knee.Day(14), Knee.Day(21), 80.0), (change.From, change.To, change.Old));
    }

    [Theory] // Part 5.1: two falls in a row deserve attention, however small; assumed.
    [InlineData(100, 98, 96, true)]
    [InlineData(98, 100, 98, false)]
    [InlineData(100, 98, 98, false)]
    [InlineData(96, 98, 100, false)]
    public void Two_falls_in_a_row_are_possible_worsening(double first, double second, double third, bool possibly)
    {
        Change change = Visit.Last(MeasureIds.FlexionActive, first, second, third)!;

        Assert.Equal((ChangeClass.NoDetectableChange, possibly), (change.Class, change.PossiblyWorse));
        Assert.Equal(possibly, change.Notes.Contains("worse at two visits in a row"));
    }

    [Fact]
    public void A_proved_fall_stays_worse() => Assert.Equal(ChangeClass.Worse, Visit.Last(MeasureIds.FlexionActive, 100, 98, 80)!.Class);

    [Theory] // Part 5.1, Sturgill 2009: two grades, or one grade that the next visit shows again. 1 is trace, 2 is one plus.
    [InlineData(new double[] { 1, 2 }, ChangeClass.NoDetectableChange, "possible worsening")]
    [InlineData(new double[] { 1, 3 }, ChangeClass.Worse, "worse")]
    [InlineData(new double[] { 1, 2, 2 }, ChangeClass.Worse, "worse")]
    [InlineData(new double[] { 1, 2, 3 }, ChangeClass.Worse, "worse")]
    [InlineData(new double[] { 1, 2, 1 }, ChangeClass.NoDetectableChange, "no detectable change")]
    [InlineData(new double[] { 1, 2, 2, 2 }, ChangeClass.NoDetectableChange, "no detectable change")] // told at the visit before
    [InlineData(new double[] { 1, 3, 3 }, ChangeClass.NoDetectableChange, "no detectable change")]
    [InlineData(new double[] { 3, 2, 2 }, ChangeClass.Improved, "improved")]
    [InlineData(new double[] { 2, 2 }, ChangeClass.NoDetectableChange, "no detectable change")]
    public void One_grade_counts_once_it_is_seen_again(double[] grades, ChangeClass expected, string words)
    {
        Change change = Visit.Last(MeasureIds.Effusion, grades)!;

        Assert.Equal((expected, words), (change.Class!.Value, change.Words));
    }

    [Fact]
    public void A_confirmed_step_is_told_against_the_visit_before_it()
    {
        Change change = Visit.Last(MeasureIds.Effusion, 1, 2, 2)!;

        Assert.Equal((Knee.Day(7), Knee.Day(21), 1.0, 2.0), (change.From, change.To, change.Old, change.New));
        Assert.Contains("seen at two visits in a row", change.Notes);
    }

    [Theory] // Part 1.2: a whole grade between raters is usual, so one counts when it is confirmed; pain counts from three points.
    [InlineData("muscle_test", new double[] { 3, 4 }, ChangeClass.NoDetectableChange)]
    [InlineData("muscle_test", new double[] { 3, 4, 4 }, ChangeClass.Improved)]
    [InlineData("muscle_test", new double[] { 3, 3.5, 3.5 }, ChangeClass.NoDetectableChange)]
    [InlineData(MeasureIds.PainActivity, new double[] { 3, 5, 5 }, ChangeClass.NoDetectableChange)]
    [InlineData(MeasureIds.PainActivity, new double[] { 3, 6 }, ChangeClass.Worse)]
    public void Each_scale_of_steps_has_its_own_step(string measure, double[] values, ChangeClass expected) =>
        Assert.Equal(expected, Visit.Last(measure, values)!.Class);
}
