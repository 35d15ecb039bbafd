using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>Everything clinical that is data: what the rules compare with and what a draft is made of. Always whole: a partly read library does not exist.</summary>
public sealed record ClinicalLibrary
{
    /// <summary>Thresholds by id.</summary>
    public required ImmutableSortedDictionary<string, Limit> Limits { get; init; }

    /// <summary>The rungs of the stim ladder, each exactly once, in order.</summary>
    public required ImmutableArray<LadderRung> Ladder { get; init; }

    /// <summary>Regimens by id.</summary>
    public required ImmutableSortedDictionary<string, Regimen> Regimens { get; init; }

    /// <summary>The regimen a draft takes when none is named.</summary>
    public required string DefaultRegimen { get; init; }

    /// <summary>Exercises by id.</summary>
    public required ImmutableSortedDictionary<string, Exercise> Exercises { get; init; }

    /// <summary>Milestones by week, then id.</summary>
    public required ImmutableArray<Milestone> Milestones { get; init; }

    /// <summary>Screening items in the order in which they are asked.</summary>
    public required ImmutableArray<ScreeningItem> Screening { get; init; }

    /// <summary>Red flags in the order in which they are asked; every one of <see cref="FlagIds.Needed"/> among them.</summary>
    public required ImmutableArray<RedFlag> RedFlags { get; init; }

    /// <summary>Measures by id.</summary>
    public required ImmutableSortedDictionary<string, Measure> Measures { get; init; }

    /// <summary>Starting assumptions of forecasts by id; empty where none is known.</summary>
    public ImmutableSortedDictionary<string, RecoveryPrior> Priors { get; init; } = ImmutableSortedDictionary<string, RecoveryPrior>.Empty;

    /// <summary>How a forecast starts for a measure without a prior; null when it does not.</summary>
    public OwnReadingsStart? OwnReadings { get; init; }

    /// <summary>A short text that changes when any of the data does; kept with every plan drafted from it.</summary>
    public required string Version { get; init; }

    /// <summary>The threshold with an id of <see cref="LimitIds"/>.</summary>
    /// <exception cref="KeyNotFoundException">There is none: the library was not made by a reader that checks.</exception>
    public Limit Limit(string id) => Limits[id];

    /// <summary>An optional threshold of <see cref="LimitIds.OptionalUnits"/>; null when the clinic has not set it.</summary>
    public Limit? OptionalLimit(string id) => Limits.GetValueOrDefault(id);

    /// <summary>The prior from which a measure is forecast, a clinic's own before a shipped one; null when there is none.</summary>
    public RecoveryPrior? PriorOf(string measure) =>
        Priors.Values.Where(prior => prior.InUse && prior.Measure == measure).MaxBy(prior => prior.IsClinic);

    /// <summary>What the ladder says of a rung.</summary>
    public LadderRung RungOf(Rung rung) => Ladder[(int)rung];
}
