using Progression.Core.People;

namespace Progression.App.Start;

/// <summary>Why the start screen was left, as data: the workbook fulfils it and comes back.</summary>
public abstract record StartWish
{
    private StartWish()
    {
    }

    /// <summary>Open the plan of a case in the grid.</summary>
    /// <param name="Code">Which case.</param>
    public sealed record OpenPlan(CaseCode Code) : StartWish;

    /// <summary>Draft and save a new case, then open its plan.</summary>
    /// <param name="Case">The case as typed.</param>
    public sealed record MakeCase(Case Case) : StartWish;

    /// <summary>Open the demo scenario.</summary>
    public sealed record ShowDemo : StartWish;
}
