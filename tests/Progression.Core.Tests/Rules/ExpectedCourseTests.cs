using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

/// <summary>Goals between the shipped milestones (80 deg at week 1, 90 at 2, 99 at 4, 106 at 6; lag 10 at week 1, 5 at 3), in straight lines.</summary>
public sealed class ExpectedCourseTests
{
    [Theory]
    [InlineData(MeasureIds.FlexionActive, 0.5, 80)]
    [InlineData(MeasureIds.FlexionActive, 1, 80)]
    [InlineData(MeasureIds.FlexionActive, 2, 90)]
    [InlineData(MeasureIds.FlexionActive, 3, 94.5)]
    [InlineData(MeasureIds.FlexionActive, 5, 102.5)]
    [InlineData(MeasureIds.FlexionActive, 30, 117)]
    [InlineData(MeasureIds.Lag, 2, 7.5)]
    [InlineData(MeasureIds.Lag, 3, 5)]
    public void Goals_go_straight_from_milestone_to_milestone(string measure, double week, double goal) =>
        Assert.Equal(goal, Course(Knee.Well).Target(measure, week)!.Value, 1e-9);

    [Fact]
    public void A_measure_without_milestones_has_no_goal()
    {
        Assert.Null(Course(Knee.Well).Target(MeasureIds.Effusion, 3));
        Assert.Empty(Course(Knee.Well).Around(MeasureIds.Effusion, 3));
        Assert.Empty(Course(Knee.Well).Around("no_such_measure", 3));
    }

    [Fact]
    public void A_goal_names_the_milestones_it_lies_between()
    {
        Assert.Equal(["flexion-week-2", "flexion-week-4"], Course(Knee.Well).Around(MeasureIds.FlexionActive, 3).Select(one => one.Id));
        Assert.Equal(["flexion-week-4"], Course(Knee.Well).Around(MeasureIds.FlexionActive, 4).Select(one => one.Id));
    }

    [Fact] // 80 deg at week 4 is the goal of week 1: three weeks behind.
    public void A_knee_that_is_behind_stays_as_many_weeks_behind()
    {
        ExpectedCourse course = Course(Knee.Well.Seen(28, Look.Well.With(MeasureIds.FlexionActive, 80)));

        Assert.Equal(3, course.Delay(MeasureIds.FlexionActive));
        Assert.Equal(94.5, course.Expected(MeasureIds.FlexionActive, 6)!.Value, 1e-9);
        Assert.Equal("94.5 deg expected, 3 weeks behind the milestones", course.Words(MeasureIds.FlexionActive, 6));
        Assert.Equal("80 deg, measured 2026-03-30", course.Words(MeasureIds.FlexionActive, 5));
    }

    [Fact]
    public void A_knee_that_is_ahead_keeps_what_it_has()
    {
        ExpectedCourse course = Course(Knee.Well.Seen(7, Look.Well.With(MeasureIds.FlexionActive, 100)));

        Assert.Equal(0, course.Delay(MeasureIds.FlexionActive));
        Assert.Equal(100, course.Expected(MeasureIds.FlexionActive, 4));
        Assert.Equal(106, course.Expected(MeasureIds.FlexionActive, 6));
    }

    [Fact]
    public void What_was_never_measured_is_never_expected()
    {
        ExpectedCourse course = Course(Knee.Well.Seen(7, Look.Empty));

        Assert.Null(course.Expected(MeasureIds.FlexionActive, 6));
        Assert.Equal("not measured", course.Words(MeasureIds.FlexionActive, 6));
    }

    [Fact]
    public void The_latest_visit_that_measured_counts()
    {
        ExpectedCourse course = Course(Knee.Well.Seen(7, Look.Well.With(MeasureIds.FlexionActive, 85)).Seen(9, Look.Empty));

        Assert.Equal(85, course.Expected(MeasureIds.FlexionActive, 2));
    }

    [Fact]
    public void A_visit_after_the_day_asked_for_is_not_read() =>
        Assert.Null(new ExpectedCourse(Knee.Well.Seen(7, Look.Well).Case, Knee.Library, Knee.Day(6)).Latest);

    [Theory] // The milestone of the straight-leg raise is due at week 2, so from week 3 on it may be expected.
    [InlineData(null, 2, null)]
    [InlineData(null, 3, true)]
    [InlineData(Answer.Yes, 1, true)]
    [InlineData(Answer.No, 2, false)]
    [InlineData(Answer.No, 3, true)]
    [InlineData(Answer.Unknown, 2, null)]
    public void A_sign_is_expected_once_seen_or_once_its_milestone_is_due(Answer? answer, int week, bool? expected)
    {
        Knee knee = Knee.Well.Seen(7, answer is { } given ? Look.Empty.Says(Signs.StraightLegRaise, given) : Look.Empty);

        Assert.Equal(expected, Course(knee).ExpectedSign(Signs.StraightLegRaise, MilestoneIds.StraightLegRaise, week));
    }

    [Fact]
    public void A_sign_answered_no_late_is_expected_only_from_the_week_after()
    {
        ExpectedCourse course = Course(Knee.Well.Seen(30, Look.Empty.Says(Signs.StraightLegRaise, Answer.No)));

        Assert.Equal(false, course.ExpectedSign(Signs.StraightLegRaise, MilestoneIds.StraightLegRaise, 5));
        Assert.Equal(true, course.ExpectedSign(Signs.StraightLegRaise, MilestoneIds.StraightLegRaise, 6));
    }

    private static ExpectedCourse Course(Knee knee) => new(knee.Case, Knee.Library, Knee.Day(180));
}
