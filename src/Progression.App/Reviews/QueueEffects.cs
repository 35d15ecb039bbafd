using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Reviews;

/// <summary>Open the plan of a case to review it.</summary>
/// <param name="Code">Which case.</param>
public sealed record OpenReview(CaseCode Code) : ScreenEffect;

/// <summary>Read the queue again.</summary>
public sealed record ReadQueue : ScreenEffect;

/// <summary>The queue was read, because somebody had saved.</summary>
/// <param name="Waiting">What waits now.</param>
public sealed record QueueRead(ImmutableArray<WaitingReview> Waiting) : ScreenEffect;
