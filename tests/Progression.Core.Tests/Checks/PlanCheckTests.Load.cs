using System.Collections.Immutable;
using Progression.Core.Checks;
using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Checks;

/// <summary>Load, time and start of stim at their limits. The limits are common practice.</summary>
public sealed partial class PlanCheckTests
{
    [Theory] // Isometric, 10 s a repetition: 100 s a day in week 2, then 150 (+50 %), 160 (+60 %) or 140.
    [InlineData(14, false)]
    [InlineData(15, false)]
    [InlineData(16, true)]
    public void Load_may_rise_by_half_from_week_to_week(int repetitions, bool warned)
    {
        PlanRevision plan = Grid.Empty().Put("quads-strength", 2, "quad-set 1x10 hold 10 s").Put("quads-strength", 3, $"quad-set 1x{repetitions} hold 10 s");

        Assert.Equal(warned, Check(plan).Of("LOAD-RISE") is [{ Severity: Severity.Warning } finding] && finding.Cells[0] == new CellAddress(Lanes.Load, 3));
    }

    [Fact]
    public void A_first_week_of_fewer_days_is_compared_as_a_full_week()
    {
        PlanRevision plan = Grid.Empty(from: 4).Put("quads-strength", 1, "quad-set 1x10 hold 10 s").Put("quads-strength", 2, "quad-set 1x10 hold 10 s");

        Assert.Equal(3, PlanFigures.Of(plan, Knee.Library)[0].PlannedDays);
        Assert.Empty(Check(plan).Of("LOAD-RISE"));
    }

    [Fact]
    public void The_contraction_along_with_stim_is_no_rise_of_load() =>
        Assert.Empty(Check(Grid.Empty().Put("quads-strength", 2, "quad-set 1x10 hold 10 s").Put("quads-strength", 3, "quad-set 1x10 hold 10 s")
            .Put("stim", 3, "high 15x2 daily").Put("with-stim", 3, Paired)).Of("LOAD-RISE"));

    [Theory]
    [InlineData(119, false)]
    [InlineData(120, false)]
    [InlineData(121, true)]
    public void Two_hours_a_day_may_be_asked_of_the_patient(int minutes, bool warned) =>
        Assert.Equal(warned, !Check(Grid.Empty().Put("walking", 2, $"walk-with-aid {minutes} min")).Of("TIME-DAY").IsEmpty);

    [Fact] // 30 min of stim (15 contractions of 60 s, twice) and 90 min of walking are 120; the contraction along with stim takes no time of its own.
    public void Stim_counts_by_the_clock_in_the_time_of_the_day()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 15x2 daily").Put("with-stim", 2, Paired).Put("walking", 2, "walk-with-aid 90 min");

        Assert.Equal(120, PlanFigures.Of(plan, Knee.Library)[1].MinutesOnLongestDay, 1e-9);
        Assert.Empty(Check(plan).Of("TIME-DAY"));
        Assert.Single(Check(plan.Put("walking", 2, "walk-with-aid 91 min")).Of("TIME-DAY"));
    }

    [Theory] // Not before post-op day 1.
    [InlineData(0, 1, true)]
    [InlineData(1, 1, false)]
    [InlineData(1, 2, true)]
    [InlineData(2, 2, false)]
    public void Stim_before_its_first_day_is_warned_of(int from, int limit, bool warned) =>
        Assert.Equal(warned, !Knee.Well.Check(
            Grid.Empty(from: from).Put("stim", 1, "high 15x2 daily").Put("with-stim", 1, Paired), Knee.LibraryWith(LimitIds.StimFirstDay, limit)).Of("STIM-EARLY").IsEmpty);

    [Fact]
    public void Check_lanes_show_the_figure_and_mark_what_is_over()
    {
        PlanRevision plan = Grid.Empty().Put("stim", 2, "high 16x1 mon").Put("with-stim", 2, "quad-set-with-stim 1x15 hold 15 s mon")
            .Put("quads-strength", 1, "quad-set 1x10 hold 10 s").Put("quads-strength", 2, "quad-set 1x16 hold 10 s tue").Put("walking", 3, "walk-with-aid 121 min");
        ImmutableArray<WeekFigures> weeks = PlanFigures.Of(plan, Knee.Library);

        string Of(string lane, int week) => CheckText.Of(plan.LaneOf(lane)!, weeks[week - 1], Knee.Library);

        Assert.Equal("1.9:1", Of(Lanes.Pairing, 2)); // (15 + 16) to 16
        Assert.Equal("-", Of(Lanes.Pairing, 3));
        Assert.Equal("-77 %", Of(Lanes.Load, 2)); // 160 s in seven days, 22.9 a day, after 100 a day
        Assert.Equal("-", Of(Lanes.Load, 1));
        Assert.Equal("!121 min", Of(Lanes.Time, 3));
        Assert.Equal("!0.9:1", CheckText.Of(plan.LaneOf(Lanes.Pairing)!, PlanFigures.Of(plan.Put("quads-strength", 2, "-"), Knee.Library)[1], Knee.Library));
    }
}
