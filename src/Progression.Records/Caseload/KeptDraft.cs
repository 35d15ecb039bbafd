using Progression.Core.Plans;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>Unsaved work on a plan, kept beside the store.</summary>
/// <param name="Plan">The plan as it was left.</param>
/// <param name="BasedOn">The saved revision it was made from; null when none had been saved.</param>
public sealed record KeptDraft(PlanRevision Plan, RevisionRef? BasedOn);
