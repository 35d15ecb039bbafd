using Progression.Core.Plans;

namespace Progression.Core.Tests.Plans;

public sealed class PlannedDayTests
{
    // The operation of the grid is on Monday, 2 March 2026, and day 8 is the Tuesday of week 2.
    private static string[] Days(PlanRevision plan) => [.. PlannedDay.Of(plan).Select(day => $"{day.Date:MM-dd} {day.StimSessions}")];

    [Fact]
    public void Every_day_with_stim_or_exercises_from_the_first_planned_day_on() => Assert.Equal(
        ["03-11 2", "03-13 2", "03-14 0", "03-16 0"],
        Days(Grid.Empty(weeks: 3, from: 8).Put("stim", 2, "high 15x2 mon wed fri").Put("quads-strength", 2, "quad-set 3x10 sat").Put("walking", 3, "walk-with-aid 5 min mon")));

    [Fact]
    public void A_stopped_week_and_the_exercise_along_with_stim_ask_for_nothing_by_themselves() =>
        Assert.Empty(Days(Grid.Empty(weeks: 3, from: 8).Put("stim", 2, "stopped").Put("with-stim", 2, "quad-set 3x10").Put("flexion", 2, "90 deg")));
}
