using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Core.Tests.Rules;

public sealed class LadderCourseTests
{
    [Fact]
    public void Before_the_first_session_there_is_no_rung()
    {
        LadderCourse course = Knee.Well.Seen(1, Look.Well).Stimulated(5).Course(4);

        Assert.Equal((null, null, true), (course.Rung, course.Since, course.Verdicts.IsEmpty));
    }

    [Fact]
    public void The_first_session_starts_familiarising_on_its_day()
    {
        LadderCourse course = Knee.Well.Stimulated(2).Course(2);

        Assert.Equal((Rung.Familiarise, Knee.Day(2)), (course.Rung, course.Since));
    }

    [Fact]
    public void A_strong_contraction_ends_familiarising_on_its_day()
    {
        LadderCourse course = Knee.Well.Stimulated(2, strong: false).Stimulated(3, strong: true).Stimulated(4).Course(10);

        Assert.Equal((Rung.HighVolume, Knee.Day(3)), (course.Rung, course.Since));
    }

    [Fact] // Three sessions with a note: common practice.
    public void The_third_session_ends_familiarising_only_with_a_note()
    {
        Knee two = Knee.Well.Stimulated(2, note: "weak").Stimulated(3, note: "weak");

        Assert.Equal(Rung.Familiarise, two.Course(10).Rung);
        Assert.Equal(Rung.Familiarise, two.Stimulated(4).Course(10).Rung);
        Assert.Equal((Rung.HighVolume, Knee.Day(4)), two.Stimulated(4, note: "go on") is var third ? (third.Course(10).Rung, third.Course(10).Since) : default);
        Assert.Equal(Knee.Day(5), two.Stimulated(4).Stimulated(5, note: "go on").Course(10).Since);
    }

    [Fact]
    public void A_session_after_the_day_asked_for_is_not_read()
    {
        Knee knee = Knee.Well.Stimulated(2).Stimulated(3, strong: true);

        Assert.Equal(Rung.Familiarise, knee.Course(2).Rung);
        Assert.Equal(Rung.HighVolume, knee.Course(3).Rung);
    }

    [Fact]
    public void Assessments_before_the_first_session_are_yardsticks_but_not_judged()
    {
        LadderCourse course = OnHighVolume(start: 15).Seen(22, Look.Well).Course(22);

        Assert.Equal([Knee.Day(15), Knee.Day(22)], course.Verdicts.Select(verdict => verdict.Date));
        // The lag was closed on day 8 already, which confirms that of day 22.
        Assert.Equal(Rung.Reduced, course.Rung);
    }

    [Fact]
    public void Goes_down_rung_by_rung_and_back()
    {
        Knee knee = OnHighVolume(start: 2).Seen(22, Look.Well.With(MeasureIds.QuadricepsTorque, 66));

        Assert.Equal((Rung.Reduced, Knee.Day(15)), At(knee, 15));
        // 66 % of the pre-op value on day 22 is past the last gate: stop at once.
        Assert.Equal((Rung.Stopped, Knee.Day(22)), At(knee, 22));

        Knee back = knee.Seen(29, Look.Well.Lag(12.9).With(MeasureIds.QuadricepsTorque, 66));
        Assert.Equal((Rung.LowVolume, Knee.Day(29)), At(back, 29));

        // A visit whose lag is down again, but not closed, holds.
        Assert.Equal((Rung.LowVolume, Knee.Day(29)), At(back.Seen(36, Look.Well.Lag(6).With(MeasureIds.QuadricepsTorque, 66)), 36));
    }

    [Theory] // A rung lasts 7 days or more.
    [InlineData(21, Rung.Reduced)]
    [InlineData(22, Rung.LowVolume)]
    public void Days_are_counted_from_the_step(int second, Rung expected) =>
        Assert.Equal(expected, At(OnHighVolume(start: 2).Seen(second, Look.Well.With(MeasureIds.QuadricepsTorque, 54)), second).Rung);

    [Fact]
    public void Steps_back_no_further_than_high_volume()
    {
        Knee knee = OnHighVolume(start: 2).Seen(18, Look.Well.Lag(12.9));

        Assert.Equal(Rung.Reduced, At(knee, 17).Rung);
        Assert.Equal((Rung.HighVolume, Knee.Day(18)), At(knee, 18));
        Assert.Equal((Rung.HighVolume, Knee.Day(18)), At(knee.Seen(20, Look.Well.Lag(12.9)), 20));
    }

    [Fact]
    public void A_plateau_stops_with_the_rung_it_came_from()
    {
        LadderCourse course = OnHighVolume(start: 2).Seen(22, Look.Well).Course(22);

        Assert.Equal((Rung.Stopped, Knee.Day(22)), (course.Rung, course.Since));
        Assert.Equal((Rung.Reduced, "LADDER-STOP-PLATEAU"), (course.Latest!.From, course.Latest.DecidedBy.Id));
    }

    [Fact]
    public void A_red_flag_locks_the_rung()
    {
        LadderCourse course = OnHighVolume(start: 2).Seen(29, Look.Well.Says(Signs.InfectionSigns, Answer.Yes)).Course(29);

        Assert.Equal((Rung.Reduced, LadderOutcome.ReferAndLock), (course.Rung, course.Latest!.Outcome));
    }

    /// <summary>On high volume from the first session on; seen well on days 8 and 15, which steps down on day 15 when stim was on by then for a week.</summary>
    private static Knee OnHighVolume(int start) => Knee.Well.Stimulated(start, strong: true).Seen(8, Look.Well).Seen(15, Look.Well);

    /// <summary>The plateau rule is out of play, so that the steps themselves are seen.</summary>
    private static (Rung? Rung, DateOnly? Since) At(Knee knee, int day) => knee.Course(day, Knee.LibraryWith(LimitIds.PlateauAfter, 365)) is var course ? (course.Rung, course.Since) : default;
}
