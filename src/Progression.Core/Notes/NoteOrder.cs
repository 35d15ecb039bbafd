using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.Core.Notes;

/// <summary>What a paper for clinicians is made from.</summary>
public sealed record NoteOrder
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>Its plan as it stands.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The day it is written.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Whether the plan is signed as it stands.</summary>
    public required ReviewStanding Standing { get; init; }

    /// <summary>Hash of the last entry of the records; null where there is none.</summary>
    public string? ChainHead { get; init; }

    /// <summary>The clinic's own line above everything; null for none.</summary>
    public string? Clinic { get; init; }

    /// <summary>Whom to call, in the clinic's own words; null where that is not set.</summary>
    public string? Contact { get; init; }

    /// <summary>What stands on every page of its signature.</summary>
    internal string Mark => Standing.State == SignatureState.Signed
        ? $"{SignatureWords.Of(Standing)}."
        : $"{SignatureWords.Of(Standing)}. No supervisor has signed the plan as it stands here.";

    /// <summary>"left knee".</summary>
    internal string Knee => $"{Patient.Operation.Side.ToString().ToLowerInvariant()} knee";

    /// <summary>"2026-03-09", as days are written in every paper: the one way that is read the same everywhere (ISO 8601).</summary>
    internal static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>"revision 2", or that the plan was not saved.</summary>
    internal string Revision => Standing.Plan.Revision == 0 ? "a plan that was not saved" : FormattableString.Invariant($"revision {Standing.Plan.Revision}");
}
