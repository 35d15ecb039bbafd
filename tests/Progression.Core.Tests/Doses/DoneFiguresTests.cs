using Progression.Core.Doses;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Doses;

/// <summary>Planned against done. The figures are counted by hand; no source is needed.</summary>
public sealed class DoneFiguresTests
{
    // Week 2 is days 7 to 13, Monday to Sunday.
    private static readonly PlanRevision Plan = Grid.Empty().Put("stim", 2, "high 15x2 5d").Put("with-stim", 2, "quad-set-with-stim 1x15 2/day 5d")
        .Put("quads-strength", 2, "quad-set 2x10 hold 5 s 3/day").Put("calf", 2, "heel-raise 2x10 mon wed fri");

    [Fact] // 5 days x 2 sessions x 15 contractions; quad sets 3 x 7 days and heel raises on 3 days make 24; along with stim is not counted.
    public void Plans_are_counted_by_session_and_exercise()
    {
        WeekDone week = DoneFigures.Of(Plan, Knee.Well.Case, Knee.Library)[1];

        Assert.Equal((2, 10, 150, 24), (week.Week, week.StimSessionsPlanned, week.ContractionsPlanned, week.ExercisesPlanned));
    }

    [Fact]
    public void A_week_without_logs_has_nothing_known_and_not_nothing_done()
    {
        WeekDone week = DoneFigures.Of(Plan, Logged(new SessionLog(Knee.Day(14), 15)), Knee.Library)[1];

        Assert.False(week.IsLogged);
        Assert.Null(week.StimSessionsDone);
        Assert.Null(week.ContractionsDone);
        Assert.Null(week.ExercisesDone);
        Assert.Null(week.Adherence);
    }

    [Fact]
    public void Logs_of_the_first_and_last_day_of_a_week_count()
    {
        ExerciseDone set = new("quad-set", [new SetDone(10, null)]);
        WeekDone week = DoneFigures.Of(
            Plan,
            Logged(
                new SessionLog(Knee.Day(6), 15),
                new SessionLog(Knee.Day(7), 15) { Exercises = [set, new ExerciseDone("quad-set-with-stim", [])], Adherence = Percentage.FromPercent(50) },
                new SessionLog(Knee.Day(7), 12),
                new SessionLog(Knee.Day(13), 0) { Exercises = [set, new ExerciseDone("heel-raise", [])], Adherence = Percentage.FromPercent(100) },
                new SessionLog(Knee.Day(14), 15)),
            Knee.Library)[1];

        Assert.Equal((2, 27, 3, 75d), (week.StimSessionsDone, week.ContractionsDone, week.ExercisesDone, week.Adherence!.Percent));
    }

    [Fact] // A visit was logged, so that there was no stim is known; which exercises were done is not.
    public void A_visit_without_stim_is_no_stim_done_but_exercises_nobody_wrote_down_stay_unknown()
    {
        WeekDone week = DoneFigures.Of(Plan, Logged(new SessionLog(Knee.Day(8), 0)), Knee.Library)[1];

        Assert.Equal((0, 0, null), (week.StimSessionsDone, week.ContractionsDone, week.ExercisesDone));
    }

    [Fact] // The plan begins on day 9 of week 2; week 1 lies before it.
    public void In_the_week_in_which_the_plan_begins_only_its_planned_days_are_compared()
    {
        Case logged = Logged(new SessionLog(Knee.Day(5), 10), new SessionLog(Knee.Day(8), 12), new SessionLog(Knee.Day(9), 15));

        Assert.Equal([10, 15], DoneFigures.Of(Plan with { From = Knee.Day(9) }, logged, Knee.Library).Take(2).Select(week => week.ContractionsDone));
    }

    private static Case Logged(params SessionLog[] logs) => Knee.Well.Case with { Sessions = [.. logs] };
}
