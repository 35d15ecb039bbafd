using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Core.Rules;

namespace Progression.App.Propose;

/// <summary>What lies on the desk while a proposal is decided: everything the screen reads and never changes.</summary>
public sealed record ProposeDesk
{
    /// <summary>Which case it is.</summary>
    public required CaseCode Code { get; init; }

    /// <summary>Whose knee it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>The day of the assessment; null when no proposal could be made.</summary>
    public DateOnly? Assessment { get; init; }

    /// <summary>The proposed changes, by week and lane.</summary>
    public ImmutableArray<ProposedChange> Changes { get; init; } = [];

    /// <summary>The lanes in which they lie.</summary>
    public ImmutableArray<Lane> Lanes { get; init; } = [];

    /// <summary>Why no proposal could be made; empty when one was.</summary>
    public ImmutableArray<Problem> Problems { get; init; } = [];

    /// <summary>What the stim ladder comes to; null before the first session with stim.</summary>
    public required LadderVerdict? Verdict { get; init; }

    /// <summary>The red flags as they stand.</summary>
    public required ImmutableArray<FlagState> Flags { get; init; }

    /// <summary>The forecasts by measure, with the reasons where there is none.</summary>
    public required ImmutableSortedDictionary<string, ForecastAnswer> Forecasts { get; init; }

    /// <summary>The clinical library.</summary>
    public required ClinicalLibrary Library { get; init; }

    /// <summary>The desk of a reassessment.</summary>
    /// <param name="patient">The case, with the new assessment.</param>
    /// <param name="found">What the reassessment came to.</param>
    /// <param name="library">The clinical library.</param>
    public static ProposeDesk Of(Case patient, Reassessment found, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(found);
        Proposal? proposal = found.Proposal.Value;
        return new()
        {
            Code = patient.Code,
            Title = CaseTitle.Of(patient),
            Assessment = proposal?.Assessment,
            Changes = proposal?.Changes ?? [],
            Lanes = proposal is null ? [] : [.. proposal.Fresh.Lanes.Concat(proposal.Standing.Lanes).DistinctBy(lane => lane.Id)],
            Problems = found.Proposal.Problems,
            Verdict = found.Verdict,
            Flags = found.Flags,
            Forecasts = found.Forecasts,
            Library = library,
        };
    }
}
