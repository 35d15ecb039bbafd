using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Codes;

namespace Progression.Exchange.Fhir;

/// <summary>What a bundle is made from.</summary>
public sealed record FhirOrder
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The public codes that are known.</summary>
    public required StandardCodes Codes { get; init; }

    /// <summary>The moment the bundle is made.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>The plan; null for a case that has none.</summary>
    public PlanRevision? Plan { get; init; }

    /// <summary>Which revision the plan is, and where its review stands.</summary>
    public ReviewStanding Standing { get; init; } = ReviewStanding.NotSaved;

    /// <summary>Who saved that revision, and when; null where that is not known, or it was not saved.</summary>
    public PlanStamp? Saved { get; init; }

    /// <summary>The person's name, where somebody asked that it goes along; null leaves the code to stand for the person.</summary>
    public string? Name { get; init; }

    /// <summary>Whether the date of birth goes along where the case has one.</summary>
    public bool WithBirthDate { get; init; }
}
