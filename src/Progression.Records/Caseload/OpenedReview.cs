using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>The plan of a case with its review as they stand in the store.</summary>
/// <param name="Code">The case.</param>
/// <param name="Plan">The plan as it stands.</param>
/// <param name="Review">Its revisions and what was done about them.</param>
/// <param name="ReviewStamp">Which revision of the review it is; null when nothing was done yet.</param>
/// <param name="Signed">The plan as it was signed last; null when it never was, or when that revision cannot be read.</param>
public sealed record OpenedReview(CaseCode Code, PlanRevision Plan, PlanReview Review, RevisionStamp? ReviewStamp, PlanRevision? Signed);
