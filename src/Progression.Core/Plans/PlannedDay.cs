using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>A day on which a plan asks something of the patient.</summary>
/// <param name="Date">The day.</param>
/// <param name="StimSessions">Sessions of stim on it; 0 for exercises alone.</param>
public sealed record PlannedDay(DateOnly Date, int StimSessions)
{
    /// <summary>The days of a plan with stim or exercises, oldest first.</summary>
    public static ImmutableArray<PlannedDay> Of(PlanRevision plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            .. from week in Enumerable.Range(1, plan.Weeks)
               let stim = plan.ContentAt(Lanes.Stim, week) is StimCell { Contractions: > 0 } cell ? cell : null
               let actives = plan.Lanes.Where(lane => lane.Slot is not null and not ActiveSlot.QuadsWithStim).Select(lane => plan.ContentAt(lane.Id, week)).OfType<ActiveCell>().ToArray()
               from date in plan.PlannedDays(week)
               let sessions = stim?.Days.Contains(date.DayOfWeek) == true ? stim.SessionsPerDay : 0
               where sessions > 0 || actives.Any(active => active.Dose.Days.Contains(date.DayOfWeek))
               select new PlannedDay(date, sessions),
        ];
    }
}
