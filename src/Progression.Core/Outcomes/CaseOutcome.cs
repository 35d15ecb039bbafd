using System.Collections.Immutable;
using Progression.Core.Adherence;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Statistics;

namespace Progression.Core.Outcomes;

/// <summary>What one case adds to the figures of a clinic. It holds no code and no day.</summary>
public sealed record CaseOutcome
{
    /// <summary>The year of the operation.</summary>
    public required int Year { get; init; }

    /// <summary>The regimen of the plan; null without a plan.</summary>
    public required string? Regimen { get; init; }

    /// <summary>How long it waited for each goal, by the goal's id; a goal whose measure was never taken is missing.</summary>
    public required ImmutableDictionary<string, OutcomeWait> Waits { get; init; }

    /// <summary>What was done of the plan; null without a plan, or before its first week is over.</summary>
    public required PlanAdherence? Adherence { get; init; }

    /// <summary>The stim delivered; null when no session is logged.</summary>
    public required StimDelivered? Delivered { get; init; }

    /// <summary>Forecasts that a reading has scored.</summary>
    public required int Scored { get; init; }

    /// <summary>Those whose reading lay in the 80 % band.</summary>
    public required int Hits { get; init; }

    /// <summary>What a case adds.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="plan">Its plan; null when it has none.</param>
    /// <param name="kept">Its kept forecasts.</param>
    /// <param name="by">What it is judged by.</param>
    public static CaseOutcome Of(Case patient, PlanRevision? plan, ImmutableArray<KeptForecast> kept, OutcomeYardstick by)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(by);
        ImmutableArray<KneeState> states = [.. patient.Assessments.Select(one => KneeState.At(one, patient))];
        PlanAdherence? adherence = plan is null ? null : PlanAdherence.Of(plan, patient, by.Library, by.Today);
        return new CaseOutcome
        {
            Year = patient.Operation.Date.Year,
            Regimen = plan?.Regimen,
            Waits = by.Goals.Select(goal => (goal.Id, Wait: goal.Of(patient, states, by.Library))).Where(one => one.Wait is not null)
                .ToImmutableDictionary(one => one.Id, one => one.Wait!, StringComparer.Ordinal),
            Adherence = adherence is { WeeksOver: > 0 } ? adherence : null,
            Delivered = StimDelivered.Of(patient, plan is null ? null : by.Library.Regimens.GetValueOrDefault(plan.Regimen), by.Today),
            Scored = kept.Count(one => one.Score is not null),
            Hits = kept.Count(one => one.Score is { Inside: true }),
        };
    }
}

/// <summary>What the cases of a clinic are judged by.</summary>
/// <param name="Library">The clinical library.</param>
/// <param name="Goals">What is waited for.</param>
/// <param name="Today">The present day.</param>
public sealed record OutcomeYardstick(ClinicalLibrary Library, ImmutableArray<OutcomeGoal> Goals, DateOnly Today)
{
    /// <summary>Every goal of a library, on a day.</summary>
    public static OutcomeYardstick Of(ClinicalLibrary library, DateOnly today) => new(library, OutcomeGoal.All(library), today);

    /// <summary>Fewest people a figure may rest on.</summary>
    public int LeastPeople => (int)Library.Limit(LimitIds.SummaryLeast).Value;

    /// <summary>The quartiles of what is known; null where it is known of too few people.</summary>
    internal Quartiles? Spread(IEnumerable<double?> values)
    {
        double[] known = [.. values.OfType<double>()];
        return known.Length >= LeastPeople ? Quartiles.Of(known) : null;
    }
}
