using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Core.Sheets;

namespace Progression.App.Papers;

/// <summary>What a paper is made from.</summary>
public sealed record PaperOrder
{
    /// <summary>The case.</summary>
    public required Case Patient { get; init; }

    /// <summary>Its plan.</summary>
    public required PlanRevision Plan { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>Whether the plan is signed as it stands.</summary>
    public required ReviewStanding Standing { get; init; }

    /// <summary>Hash of the last entry of the records; null for a plan that is in none.</summary>
    public string? ChainHead { get; init; }

    /// <summary>The day it is made on.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>The post-op week it is about, where it is about one.</summary>
    public required int Week { get; init; }

    /// <summary>The measure it is about, by its id, where it is about one; null for the paper's own choice.</summary>
    public string? Measure { get; init; }

    /// <summary>The plain words for the patient.</summary>
    public required HomeWords Words { get; init; }

    /// <summary>The clinic's own line above everything; null for none.</summary>
    public string? Clinic { get; init; }

    /// <summary>Whom to call, in the clinic's own words; null where that is not set.</summary>
    public string? Contact { get; init; }

    /// <summary>Whether pages are of US Letter size instead of A4.</summary>
    public bool OnLetter { get; init; }

    /// <summary>How the calendar is wanted; null for the usual.</summary>
    public CalendarWishes? Calendar { get; init; }

    /// <summary>How a bundle is wanted; null for the usual.</summary>
    public BundleWishes? Bundle { get; init; }
}
