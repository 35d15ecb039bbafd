using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Reassessing;

/// <summary>Everything the latest assessment of a case comes to. Pure: nothing is kept.</summary>
public sealed record Reassessment
{
    private Reassessment()
    {
    }

    /// <summary>What changed, for all measures and visits.</summary>
    public required Comparison Comparison { get; init; }

    /// <summary>The forecasts by measure.</summary>
    public required ImmutableSortedDictionary<string, ForecastAnswer> Forecasts { get; init; }

    /// <summary>What the ladder comes to at the assessment; null before the first stim session.</summary>
    public required LadderVerdict? Verdict { get; init; }

    /// <summary>The red flags as they stand.</summary>
    public required ImmutableArray<FlagState> Flags { get; init; }

    /// <summary>The changes proposed, or what stands in the way of a proposal.</summary>
    public required Entered<Proposal> Proposal { get; init; }

    /// <summary>The reassessment of a case whose latest assessment is the new one.</summary>
    /// <param name="standing">The plan that stands.</param>
    /// <param name="patient">The case with the new assessment.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="weeks">Weeks the plan is to have, not fewer than it has; null for as many as it has.</param>
    public static Reassessment Of(PlanRevision standing, Case patient, ClinicalLibrary library, int? weeks = null)
    {
        ArgumentNullException.ThrowIfNull(patient);
        DateOnly day = patient.Assessments.IsEmpty ? patient.Operation.Date : patient.Assessments[^1].Date;
        Entered<Proposal> proposal = Reassessing.Proposal.Of(standing, patient, library, weeks);
        return new Reassessment
        {
            Comparison = Comparison.Of(patient, library),
            Forecasts = Forecasting.All(patient, library, day),
            Verdict = proposal.Value is { } made ? made.Verdict : LadderCourse.Of(patient, library, day).Latest,
            Flags = RedFlags.Of(patient, library, day),
            Proposal = proposal,
        };
    }
}
