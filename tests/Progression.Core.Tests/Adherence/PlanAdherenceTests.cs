using Progression.Core.Adherence;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Tests.Adherence;

/// <summary>What was done of what was planned. The figures are counted by hand; no source is needed.</summary>
public sealed class PlanAdherenceTests
{
    // Three weeks of four sessions of 15, planned from the first day on; week 4 has none.
    private static readonly PlanRevision Plan = Grid.Empty(from: 0).Put("stim", 1, "high 15x2 2d").Put("stim", 2, "high 15x2 2d").Put("stim", 3, "high 15x2 2d");

    [Fact] // Week 1: 2 of 4. Week 2: 5 for 4, which counts as 4 of 4. Week 3: no log.
    public void A_week_counts_up_to_its_plan_and_a_week_without_a_log_is_not_known()
    {
        PlanAdherence done = Of(21, Log(1), Log(4), Log(7), Log(7), Log(8), Log(9), Log(10));

        Assert.Equal((3, 2), (done.WeeksOver, done.WeeksLogged));
        Assert.Equal(new DoneShare(8, 6, 1, 4), done.StimSessions);
        Assert.Equal(new DoneShare(120, 90, 15, 60), done.Contractions);
        Assert.Equal((75d, 50d), (done.StimSessions.Percent, done.StimSessions.PercentAtLeast));
    }

    [Theory] // The last day of week 2 is day 13.
    [InlineData(13, 1)]
    [InlineData(14, 2)]
    public void A_week_counts_from_the_day_after_its_last_one(int today, int weeks) => Assert.Equal(weeks, Of(today, Log(1), Log(8)).WeeksOver);

    [Fact]
    public void Weeks_before_the_plan_begins_are_not_counted()
    {
        PlanAdherence done = PlanAdherence.Of(Plan with { From = Knee.Day(14) }, Logged(Log(1), Log(15)), Knee.Library, Knee.Day(28));

        Assert.Equal((2, 1), (done.WeeksOver, done.WeeksLogged));
        Assert.Equal(new DoneShare(4, 1, 0, 0), done.StimSessions);
    }

    [Fact]
    public void Nothing_logged_has_no_share_and_at_least_nothing_done()
    {
        PlanAdherence done = Of(21);

        Assert.Null(done.StimSessions.Percent);
        Assert.Equal(0d, done.StimSessions.PercentAtLeast);
        Assert.Null(done.HomeWork);
    }

    [Fact]
    public void Before_a_week_is_over_there_is_no_share_at_all()
    {
        DoneShare sessions = Of(6, Log(1)).StimSessions;

        Assert.Equal(DoneShare.Nothing, sessions);
        Assert.Null(sessions.PercentAtLeast);
    }

    [Fact] // Week 1: 50 and 100 are 75 on average; week 2: 25; week 3 was not asked. The mean of the two weeks is 50.
    public void Home_work_is_the_mean_of_the_weeks_in_which_somebody_asked()
    {
        PlanAdherence done = Of(21, Log(1) with { Adherence = Percentage.FromPercent(50) }, Log(2) with { Adherence = Percentage.FromPercent(100) }, Log(8) with { Adherence = Percentage.FromPercent(25) });

        Assert.Equal(50, done.HomeWork!.Percent);
    }

    [Fact] // The regimen has 15 s on and 45 s off, ramps inside: a minute each.
    public void Minutes_of_stim_are_reckoned_from_the_contractions_logged()
    {
        StimDelivered? got = StimDelivered.Of(Logged(Log(1), Log(2), Log(3)), Knee.Library.Regimens["strong-15-twice-daily"], Knee.Day(2));

        Assert.Equal((2, 30), (got!.Sessions, got.Contractions));
        Assert.Equal(30, got.Minutes!.Value, 6);
    }

    [Fact]
    public void Stim_that_nobody_logged_is_not_known_and_a_visit_without_stim_is_none()
    {
        Assert.Null(StimDelivered.Of(Logged(Log(3)), null, Knee.Day(2)));
        Assert.Equal(new StimDelivered(0, 0, null), StimDelivered.Of(Logged(new SessionLog(Knee.Day(1), 0)), null, Knee.Day(2)));
    }

    private static SessionLog Log(int day) => new(Knee.Day(day), 15);

    private static PlanAdherence Of(int today, params SessionLog[] logs) => PlanAdherence.Of(Plan, Logged(logs), Knee.Library, Knee.Day(today));

    private static Case Logged(params SessionLog[] logs) => Knee.Well.Case with { Sessions = [.. logs] };
}
