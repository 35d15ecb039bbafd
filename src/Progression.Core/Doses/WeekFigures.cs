using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Doses;

/// <summary>What one week of a plan adds up to.</summary>
public sealed record WeekFigures
{
    /// <summary>The post-op week.</summary>
    public required int Week { get; init; }

    /// <summary>Planned days in the week: 7, or fewer in the week in which the plan starts; 0 before it.</summary>
    public required int PlannedDays { get; init; }

    /// <summary>Stim sessions in the week.</summary>
    public int StimSessions { get; init; }

    /// <summary>Stimulated contractions in the week.</summary>
    public int StimContractions { get; init; }

    /// <summary>Minutes of stim by the clock in the week; null when the regimen leaves its timing open.</summary>
    public double? StimMinutes { get; init; }

    /// <summary>Dates with stim.</summary>
    public ImmutableArray<DateOnly> StimDays { get; init; } = [];

    /// <summary>Dates with stim and no voluntary quadriceps work.</summary>
    public ImmutableArray<DateOnly> StimDaysWithoutQuads { get; init; } = [];

    /// <summary>Voluntary work by muscle group; a group without work is missing.</summary>
    public ImmutableSortedDictionary<MuscleGroup, MuscleWork> Work { get; init; } = ImmutableSortedDictionary<MuscleGroup, MuscleWork>.Empty;

    /// <summary>Whether any exercise at all is planned in the week.</summary>
    public bool AnyActiveWork { get; init; }

    /// <summary>Most minutes asked of the patient on one day of the week, stim and exercises together.</summary>
    public double MinutesOnLongestDay { get; init; }

    /// <summary>Quadriceps work outside the stim session, which the ladder does not govern; reckoned for all seven days, so that a week of few planned days can be compared.</summary>
    public MuscleWork QuadsAlone { get; init; } = MuscleWork.None;

    /// <summary>
    /// Change of quadriceps contraction time outside stim against the week before, in percent; null in the first planned week or where the week
    /// before has none.
    /// </summary>
    public double? QuadsChange { get; init; }

    /// <summary>Voluntary quadriceps work.</summary>
    public MuscleWork Quads => Work.GetValueOrDefault(MuscleGroup.Quadriceps, MuscleWork.None);

    /// <summary>Voluntary to stimulated contractions; null in a week without stim.</summary>
    public double? VoluntaryToStim => StimContractions == 0 ? null : (double)Quads.Contractions / StimContractions;
}
