namespace Progression.Core.Reviews;

/// <summary>A saved revision of a plan, with who made it.</summary>
/// <param name="Revision">From 1.</param>
/// <param name="Hash">Its hash.</param>
/// <param name="UserId">The account that saved it.</param>
/// <param name="Name">The account's name.</param>
/// <param name="At">When.</param>
public sealed record PlanStamp(int Revision, string Hash, string UserId, string Name, DateTimeOffset At)
{
    /// <summary>The revision as a review names it.</summary>
    public ReviewedPlan Reference => new(Revision, Hash);
}
