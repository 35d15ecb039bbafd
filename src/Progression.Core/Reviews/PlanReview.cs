using System.Collections.Immutable;

namespace Progression.Core.Reviews;

/// <summary>The revisions of a plan with what was done about their review.</summary>
/// <param name="Plans">All revisions of the plan, oldest first; at least one.</param>
/// <param name="Record">What was done about them.</param>
public sealed record PlanReview(ImmutableArray<PlanStamp> Plans, ReviewRecord Record)
{
    /// <summary>The newest revision.</summary>
    public PlanStamp Newest => Plans[^1];

    /// <summary>Where the review stands.</summary>
    public ReviewStanding Standing => ReviewStanding.Of(Newest.Reference, Record);

    /// <summary>The revisions made after the one that was signed last; all when none was.</summary>
    public IEnumerable<PlanStamp> SinceSigned => Plans.Where(plan => plan.Revision > (Record.LastSigned?.Plan.Revision ?? 0));
}
