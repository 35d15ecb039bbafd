using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>A step that can be taken back or taken again.</summary>
/// <param name="Plan">The plan to return to.</param>
/// <param name="What">What was done, as it is told in the status line.</param>
public sealed record PlanChange(PlanRevision Plan, string What);
