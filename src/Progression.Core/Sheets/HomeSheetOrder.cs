using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Sheets;

/// <summary>What a home sheet is made from.</summary>
public sealed record HomeSheetOrder
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>The plan, as it was signed or as it stands.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The language.</summary>
    public required HomeWords Words { get; init; }

    /// <summary>What stands on the sheet of its signature, in the words of the language.</summary>
    public required string Mark { get; init; }

    /// <summary>Whether the plan is signed as it stands.</summary>
    public required bool IsSigned { get; init; }

    /// <summary>The clinic's own line above everything; null for none.</summary>
    public string? Clinic { get; init; }

    /// <summary>Whom to call, in the clinic's own words; null where that is not set.</summary>
    public string? Contact { get; init; }
}
