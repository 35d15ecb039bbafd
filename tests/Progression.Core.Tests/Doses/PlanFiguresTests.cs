using System.Collections.Immutable;
using Progression.Core.Doses;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Doses;

public sealed class PlanFiguresTests
{
    [Theory] // Published inputs; totals computed from them, table 1c of the project's reference.
    [InlineData("strong-15-twice-daily", 14, 210, 210)] // Stevens-Lapsley 2012, 7 days a week assumed
    [InlineData("strong-45-minutes", 5, 450, 225)] // Yoshida 2017: 90 contractions of 30 s in 45 min
    [InlineData("ligament-half-hour", 5, 300, 150)] // Lieber 1996: 60 contractions of 30 s in 30 min
    [InlineData("burst-10-weaker-leg", 2, 20, 30)] // Stevens 2004, lower end of 2 to 3 visits; 10 and 80 s from memory
    [InlineData("burst-10-twelve-visits", 2, 20, 30)] // Petterson 2009, lower end; from memory
    [InlineData("before-the-operation", 5, 400, 100)] // Walls 2010: 20 min a day, 5 days; 5 and 10 s from memory, so 80 contractions
    public void A_week_of_high_volume_is_the_regimen_as_published(string regimen, int sessions, int contractions, double minutes)
    {
        PlanRevision plan = Knee.Well.Seen(2, Look.Well).Draft(6, regimen);

        WeekFigures week = PlanFigures.Of(plan, Knee.Library)[1];

        Assert.Equal(Rung.HighVolume, Assert.IsType<StimCell>(plan.ContentAt(Lanes.Stim, 2)).Rung);
        Assert.Equal((sessions, contractions), (week.StimSessions, week.StimContractions));
        Assert.Equal(minutes, week.StimMinutes!.Value, 1e-9);
        Assert.True(week.Quads.Contractions >= contractions);
    }

    [Fact] // Cycle of 15 on and 45 off: 60 s; 15 contractions 15:00, as the paper's 15 min a session.
    public void A_session_takes_its_cycles() => Assert.Equal(900, PlanFigures.SessionSeconds(Knee.Library.Regimens["strong-15-twice-daily"], 15));

    [Fact] // The 3 s ramp outside the on-time makes the cycle 63 s.
    public void A_ramp_outside_the_on_time_lengthens_the_session() =>
        Assert.Equal(945, PlanFigures.SessionSeconds(
            Knee.Library.Regimens["strong-15-twice-daily"] with { Ramps = Stated<RampPlacement>.As(RampPlacement.Outside, Standing.Seen) }, 15));

    [Fact]
    public void A_session_whose_timing_is_open_has_no_length()
    {
        Assert.Null(PlanFigures.SessionSeconds(Knee.Library.Regimens["two-hours-twice-daily"], 15));
        Assert.Null(PlanFigures.SessionSeconds(null, 15));

        PlanRevision plan = Grid.Empty(regimen: "two-hours-twice-daily").Put("stim", 2, "high 15x2 daily");
        Assert.Null(PlanFigures.Of(plan, Knee.Library)[1].StimMinutes);
        Assert.Equal(0, PlanFigures.Of(plan, Knee.Library)[2].StimMinutes);
    }

    [Fact] // From day 4, a Friday: fri, sat, sun of the first week are planned.
    public void Days_before_the_plan_starts_count_nothing()
    {
        PlanRevision plan = Grid.Empty(from: 4).Put("stim", 1, "high 15x2 mon wed fri").Put("quads-strength", 1, "quad-set 2x10 hold 5 s");

        WeekFigures week = PlanFigures.Of(plan, Knee.Library)[0];

        Assert.Equal((3, 2, 30), (week.PlannedDays, week.StimSessions, week.StimContractions));
        Assert.Equal([Knee.Day(4)], week.StimDays);
        Assert.Equal(60, week.Quads.Contractions);
    }

    [Fact]
    public void Work_is_summed_by_muscle_and_none_is_missing()
    {
        WeekFigures week = PlanFigures.Of(
            Grid.Empty().Put("stim", 2, "high 15x1 mon").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon")
                .Put("quads-strength", 2, "quad-set 1x10 hold 10 s mon tue").Put("calf", 2, "ankle-pump 1x20 wed").Put("bend", 2, "heel-slide 2x10"),
            Knee.Library)[1];

        Assert.Equal([MuscleGroup.Quadriceps, MuscleGroup.Calf], week.Work.Keys);
        Assert.Equal(new MuscleWork(35, 425, 0), week.Quads); // 15 x 15 s and 20 x 10 s
        Assert.Equal(new MuscleWork(20, 200, 0), week.QuadsAlone);
        Assert.Equal(new MuscleWork(20, 40, 0), week.Work[MuscleGroup.Calf]);
        Assert.Equal(35.0 / 15, week.VoluntaryToStim!.Value, 1e-12);
    }

    [Fact]
    public void A_week_without_stim_has_no_ratio_and_a_first_week_no_change()
    {
        WeekFigures week = PlanFigures.Of(Grid.Empty().Put("quads-strength", 1, "quad-set 1x10"), Knee.Library)[0];

        Assert.Equal((null, null), (week.VoluntaryToStim, week.QuadsChange));
    }

    [Fact] // 100 s a day, then 120: +20 %; after a week without any there is nothing to compare with.
    public void Change_of_load_is_against_the_week_before()
    {
        ImmutableArray<WeekFigures> weeks = PlanFigures.Of(
            Grid.Empty(from: 0).Put("quads-strength", 1, "quad-set 1x10 hold 10 s").Put("quads-strength", 2, "quad-set 1x12 hold 10 s").Put("quads-strength", 4, "quad-set 1x12 hold 10 s"),
            Knee.Library);

        Assert.Equal(20, weeks[1].QuadsChange!.Value, 1e-9);
        Assert.Equal(-100, weeks[2].QuadsChange!.Value, 1e-9);
        Assert.Null(weeks[3].QuadsChange);
    }
}
