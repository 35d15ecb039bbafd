using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>How a screening item bears on stim.</summary>
public enum ScreeningKind
{
    /// <summary>Bars stim while present, unanswered or unknown.</summary>
    Contraindication,

    /// <summary>Stim may go on with the stated care.</summary>
    Precaution,

    /// <summary>Asked for the record; changes nothing.</summary>
    NoConcern,
}

/// <summary>A question asked before stim is planned.</summary>
public sealed record ScreeningItem
{
    /// <summary>The permanent id: "active-implant".</summary>
    public required string Id { get; init; }

    /// <summary>The question, answered yes, no or unknown; yes is the answer that matters.</summary>
    public required string Question { get; init; }

    /// <summary>How it bears on stim.</summary>
    public required ScreeningKind Kind { get; init; }

    /// <summary>Where on the body it counts.</summary>
    public required string Where { get; init; }

    /// <summary>What to do when the answer is yes.</summary>
    public required string Action { get; init; }

    /// <summary>Whether a named clinician's clearance lifts it.</summary>
    public required bool CanBeCleared { get; init; }

    /// <summary>For a precaution: most sessions a day while it is present; null for no cap.</summary>
    public int? SessionsPerDayAtMost { get; init; }

    /// <summary>For a precaution: most contractions a session, as a share of the regimen's; null for no cap.</summary>
    public Percentage? ContractionShareAtMost { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Source Source { get; init; }
}
