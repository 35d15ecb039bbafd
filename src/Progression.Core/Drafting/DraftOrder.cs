using Progression.Core.Plans;

namespace Progression.Core.Drafting;

/// <summary>What a draft is asked for beside the case. Null takes the case's own wish, then the default.</summary>
public sealed record DraftOrder
{
    /// <summary>Weeks of the grid, 1 to 26; six when neither the order nor the case says.</summary>
    public int? Weeks { get; init; }

    /// <summary>The regimen's id; the library's default when neither the order nor the case says.</summary>
    public string? Regimen { get; init; }

    /// <summary>The plan that stands: exercises given in its last week before the draft go on from there. Null for a first plan.</summary>
    public PlanRevision? Standing { get; init; }

    /// <summary>Weeks of a plan when nobody says otherwise.</summary>
    public const int DefaultWeeks = 6;
}
