using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Intake;

/// <summary>What lies beside the form of a case: everything it reads and never changes.</summary>
public sealed record IntakeDesk
{
    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The present day; no operation lies after it.</summary>
    public required DateOnly Today { get; init; }

    /// <summary>Codes that are in the store already; a new case has another one.</summary>
    public ImmutableHashSet<string> Taken { get; init; } = [];

    /// <summary>The case as it is saved; null for a new one.</summary>
    public Case? Case { get; init; }

    /// <summary>Its plan as it is saved; null when there is none.</summary>
    public PlanRevision? Plan { get; init; }

    /// <summary>Why the day of the operation and the knee stay as they are, as a sentence; null while they can be put right.</summary>
    public string? WhyFixed => Case is null ? null
        : !Case.Assessments.IsEmpty || !Case.Sessions.IsEmpty || Case.PreOp is not null ? "Visits and sessions are kept under it; a case with the right one is made anew."
        : Plan?.Cells.Values.Any(cell => cell.IsPinned) == true ? "The plan has cells that were set by hand; unpin them first, then it is drafted anew."
        : null;
}
