using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Fhir;

/// <summary>Weeks that follow one another in which a lane holds the same.</summary>
/// <param name="Lane">The lane.</param>
/// <param name="Content">What stands in each of them.</param>
/// <param name="First">The first week.</param>
/// <param name="Last">The last week.</param>
internal sealed record PlanStretch(Lane Lane, CellContent Content, int First, int Last)
{
    /// <summary>The stretches of a lane from the first planned week on; weeks without content belong to none.</summary>
    public static IEnumerable<PlanStretch> Of(PlanRevision plan, Lane lane)
    {
        PlanStretch? open = null;
        for (int week = Math.Max(1, plan.FirstWeek); week <= plan.Weeks; week++)
        {
            CellContent? content = plan.ContentAt(lane.Id, week);
            if (open is not null && open.Content.Equals(content))
            {
                open = open with { Last = week };
                continue;
            }

            if (open is not null)
            {
                yield return open;
            }

            open = content is null ? null : new PlanStretch(lane, content, week, week);
        }

        if (open is not null)
        {
            yield return open;
        }
    }

    /// <summary>Its first and last day; no day lies before the plan begins.</summary>
    public (DateOnly Start, DateOnly End) Days(PlanRevision plan)
    {
        DateOnly start = PostOpWeek.Start(plan.Operation, First);
        return (start < plan.From ? plan.From : start, PostOpWeek.End(plan.Operation, Last));
    }
}
