using Progression.App.Actions;
using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>Open the plan of a case in the grid.</summary>
/// <param name="Code">Which case.</param>
public sealed record OpenPlan(CaseCode Code) : ScreenEffect;

/// <summary>Open the demo scenario.</summary>
public sealed record ShowDemo : ScreenEffect;

/// <summary>Read the list again, because somebody may have saved.</summary>
public sealed record ReadAgain : ScreenEffect;
