using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Outcomes;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Outcomes;

/// <summary>Weeks are days over seven, counted by hand.</summary>
public sealed class OutcomeGoalTests
{
    [Fact] // 14 deg, then 4 deg on day 14, which one reading does not confirm, then 3 deg on day 21.
    public void The_lag_has_closed_when_the_ladder_says_so_and_not_at_the_first_small_reading()
    {
        OutcomeWait wait = Of(OutcomeGoal.LagClosed, Lag(7, 14), Lag(14, 4), Lag(21, 3), Lag(28, 2))!;

        Assert.Equal((new Followed(3, true), 1d), (wait.Followed, wait.GapWeeks));
    }

    [Fact]
    public void Without_it_the_case_counts_to_the_last_visit_at_which_it_was_looked_for()
    {
        Knee knee = Knees(Lag(7, 14), Lag(14, 9)).Seen(28, Look.Empty.With(MeasureIds.FlexionActive, 90));

        Assert.Equal(new OutcomeWait(new Followed(2, false), null), Of(OutcomeGoal.LagClosed, knee));
    }

    [Theory] // 90 deg by active flexion; one degree less is not there.
    [InlineData(90, true)]
    [InlineData(89, false)]
    public void A_milestone_is_reached_by_the_first_reading_that_meets_it(double degrees, bool reached)
    {
        Knee knee = Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionActive, 70)).Seen(17, Look.Empty.With(MeasureIds.FlexionActive, degrees));
        OutcomeWait wait = Of("flexion-week-2", knee)!;

        Assert.Equal(new Followed(17 / 7.0, reached), wait.Followed);
        Assert.Equal(reached, wait.GapWeeks is double gap && Math.Abs(gap - 1.428571) < 1e-6);
    }

    [Fact]
    public void What_is_less_when_it_is_better_is_reached_from_above() =>
        Assert.Equal(new Followed(2, true), Of("extension-week-3", Knee.Well.Seen(7, Look.Empty.With(MeasureIds.ExtensionPassive, 6)).Seen(14, Look.Empty.With(MeasureIds.ExtensionPassive, 5)))!.Followed);

    [Fact] // Seen at the first visit: it came about some time since the operation.
    public void What_is_there_at_the_first_visit_is_counted_from_the_operation()
    {
        OutcomeWait wait = Of("flexion-week-1", Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionActive, 85)))!;

        Assert.Equal((new Followed(1, true), 1d), (wait.Followed, wait.GapWeeks));
    }

    [Fact]
    public void A_measure_that_was_never_taken_has_no_wait_and_passive_flexion_does_not_stand_in() =>
        Assert.Null(Of("flexion-week-1", Knee.Well.Seen(7, Look.Empty.With(MeasureIds.FlexionPassive, 100))));

    [Fact]
    public void A_reading_on_the_day_of_the_operation_is_half_a_day_of_waiting() =>
        Assert.Equal(new Followed(0.5 / 7, true), Of("flexion-week-1", Knee.Well.Seen(0, Look.Empty.With(MeasureIds.FlexionActive, 85)))!.Followed);

    [Fact] // Three milestones of the shipped library ask for 110 deg, 5 deg passive and 3 deg lag twice: each value once.
    public void Every_value_of_a_measure_is_waited_for_once_and_the_lag_first()
    {
        OutcomeGoal[] goals = [.. OutcomeGoal.All(Knee.Library)];

        Assert.Equal(OutcomeGoal.LagClosed, goals[0].Id);
        Assert.Equal(goals.Length - 1, goals[1..].Select(goal => (goal.Milestone!.Measure, goal.Milestone.Target)).Distinct().Count());
        Assert.Contains(goals, goal => goal.Id == "flexion-week-8");
        Assert.DoesNotContain(goals, goal => goal.Id is "flexion-goal-week-6" or "lag-week-26" or "raise-without-lag");
    }

    private static (int Day, double Lag) Lag(int day, double lag) => (day, lag);

    private static Knee Knees(params (int Day, double Lag)[] visits) =>
        visits.Aggregate(Knee.Well, (knee, visit) => knee.Seen(visit.Day, Look.Empty.With(MeasureIds.ExtensionPassive, 2).Lag(visit.Lag)));

    private static OutcomeWait? Of(string goal, params (int Day, double Lag)[] visits) => Of(goal, Knees(visits));

    private static OutcomeWait? Of(string goal, Knee knee) => OutcomeGoal.All(Knee.Library).Single(one => one.Id == goal)
        .Of(knee.Case, [.. knee.Case.Assessments.Select(one => KneeState.At(one, knee.Case))], Knee.Library);
}
