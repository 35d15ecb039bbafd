using Progression.Core.Doses;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Checks;

/// <summary>How fast the load rises and how much of the day it takes.</summary>
internal static class LoadChecks
{
    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        Limit rise = facts.Library.Limit(LimitIds.LoadRise);
        Limit minutes = facts.Library.Limit(LimitIds.MinutesPerDay);
        Limit firstDay = facts.Library.Limit(LimitIds.StimFirstDay);
        foreach (WeekFigures week in facts.OpenWeeks)
        {
            if (week.QuadsChange is double change && change > rise.Value)
            {
                yield return Finding(
                    "LOAD-RISE", rise, new CellAddress(Lanes.Load, week.Week),
                    $"Week {week.Week}: quadriceps contraction time outside stim is {Number.Signed(change, 0)} % against the week before; at most +{rise.Text} is asked for.");
            }

            if (week.MinutesOnLongestDay > minutes.Value)
            {
                yield return Finding(
                    "TIME-DAY", minutes, new CellAddress(Lanes.Time, week.Week),
                    $"Week {week.Week}: {Number.Text(Math.Ceiling(week.MinutesOnLongestDay))} minutes on the longest day; at most {minutes.Text} is asked for.");
            }

            if (!week.StimDays.IsEmpty && week.StimDays[0].DayNumber - facts.Plan.Operation.DayNumber < firstDay.Value)
            {
                yield return Finding(
                    "STIM-EARLY", firstDay, PlanFacts.Stim(week.Week),
                    $"Week {week.Week}: stim is planned on post-op day {week.StimDays[0].DayNumber - facts.Plan.Operation.DayNumber}, before day {Number.Text(firstDay.Value)}.");
            }
        }
    }

    private static Finding Finding(string rule, Limit limit, CellAddress cell, string text) => new()
    {
        Rule = rule,
        Severity = Severity.Warning,
        Text = text,
        Limits = [limit],
        Source = limit.Source,
        Cells = [cell],
    };
}
