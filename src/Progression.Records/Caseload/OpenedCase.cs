using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>A case with its plan and kept forecasts as they stand in the store.</summary>
/// <param name="Case">The case.</param>
/// <param name="CaseStamp">Which revision of the case it is.</param>
/// <param name="Plan">The plan; null when none was saved.</param>
/// <param name="PlanStamp">Which revision of the plan it is; null when none was saved.</param>
/// <param name="Damage">What is known to be damaged in the records; empty when all is well.</param>
public sealed record OpenedCase(Case Case, RevisionStamp CaseStamp, PlanRevision? Plan, RevisionStamp? PlanStamp, IReadOnlyList<string> Damage)
{
    /// <summary>The forecasts that were kept, oldest first; empty when none were.</summary>
    public ImmutableArray<KeptForecast> Forecasts { get; init; } = [];

    /// <summary>Which revision of the forecasts it is; null when none were saved.</summary>
    public RevisionStamp? ForecastsStamp { get; init; }

    /// <summary>What was done about the reviews of the plan.</summary>
    public ReviewRecord Review { get; init; } = ReviewRecord.Empty;

    /// <summary>Where the review of the plan stands; null when there is no plan.</summary>
    public ReviewStanding? Standing => PlanStamp is { } plan ? ReviewStanding.Of(new ReviewedPlan(plan.Revision, plan.Hash), Review) : null;

    /// <summary>Why it could not be written down that the case was opened, as a sentence; null when it was, or need not be.</summary>
    public string? Unnoted { get; init; }
}
