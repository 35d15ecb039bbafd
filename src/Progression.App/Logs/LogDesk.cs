using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Logs;

/// <summary>What lies beside the form of a session: everything it reads and never changes.</summary>
/// <param name="Case">The case as it is saved.</param>
/// <param name="Plan">The plan as it stands; null when there is none, and nothing is filled in.</param>
/// <param name="Library">The clinical library.</param>
/// <param name="Today">The present day; no session lies after it.</param>
public sealed record LogDesk(Case Case, PlanRevision? Plan, ClinicalLibrary Library, DateOnly Today);
