using Progression.App.Actions;
using Progression.Core.Plans;

namespace Progression.App.Imports;

/// <summary>Read the named file and show what it comes to.</summary>
public sealed record ReadFile : ScreenEffect;

/// <summary>Bring in what was shown.</summary>
public sealed record BringIn : ScreenEffect;

/// <summary>The cells of a file came into the plan, told to the grid; nothing of it is saved yet.</summary>
/// <param name="Plan">The plan with them.</param>
/// <param name="Told">What came in, as a sentence.</param>
public sealed record CellsBroughtIn(PlanRevision Plan, string Told) : ScreenEffect;
