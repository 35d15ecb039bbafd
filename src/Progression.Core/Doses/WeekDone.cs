using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>What was planned in a post-op week beside what was logged. A week of which nothing is logged has nothing done that is known: null, never zero.</summary>
public sealed record WeekDone
{
    /// <summary>The post-op week.</summary>
    public required int Week { get; init; }

    /// <summary>Stim sessions planned.</summary>
    public required int StimSessionsPlanned { get; init; }

    /// <summary>Sessions logged in which there was stim; null when no session is logged.</summary>
    public required int? StimSessionsDone { get; init; }

    /// <summary>Stimulated contractions planned.</summary>
    public required int ContractionsPlanned { get; init; }

    /// <summary>Stimulated contractions logged; null when no session is logged.</summary>
    public required int? ContractionsDone { get; init; }

    /// <summary>How many times an exercise is to be done: each exercise on each of its days, as often as it is due; the contraction along with stim is not counted.</summary>
    public required int ExercisesPlanned { get; init; }

    /// <summary>How many times one was logged; null when no exercise is logged.</summary>
    public required int? ExercisesDone { get; init; }

    /// <summary>Voluntary quadriceps contractions logged: repetitions of its exercises, those along with stim included; null when no repetition of one is logged.</summary>
    public required int? QuadsDone { get; init; }

    /// <summary>Share of the home work that was done, as the person said, the mean of the answers; null when nobody was asked.</summary>
    public required Percentage? Adherence { get; init; }

    /// <summary>Whether anything is logged.</summary>
    public bool IsLogged => StimSessionsDone is not null;
}
