using Progression.App.Actions;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Save the plan as the case's plan; the draft that was kept of it is then no longer needed.</summary>
/// <param name="Plan">What to save.</param>
public sealed record SavePlan(PlanRevision Plan) : ScreenEffect;

/// <summary>Keep the plan as a draft beside the saved one. Asked for after every change, so that nothing can be lost.</summary>
/// <param name="Plan">What to keep.</param>
public sealed record KeepDraft(PlanRevision Plan) : ScreenEffect;

/// <summary>Drop the draft: the saved plan is what counts.</summary>
public sealed record DropDraft : ScreenEffect;
