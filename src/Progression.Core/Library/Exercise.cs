namespace Progression.Core.Library;

/// <summary>An active exercise with what it needs, its starting dose and how that dose grows.</summary>
public sealed record Exercise
{
    /// <summary>The permanent id: "straight-leg-raise".</summary>
    public required string Id { get; init; }

    /// <summary>The clinician's name for it.</summary>
    public required string Title { get; init; }

    /// <summary>A short name for a narrow cell, at most ten characters.</summary>
    public required string Short { get; init; }

    /// <summary>The name in plain words for the patient.</summary>
    public required string PatientName { get; init; }

    /// <summary>The muscle group it loads most.</summary>
    public required MuscleGroup Muscle { get; init; }

    /// <summary>What it is for, in words.</summary>
    public required string Purpose { get; init; }

    /// <summary>The lane it belongs to.</summary>
    public required ActiveSlot Slot { get; init; }

    /// <summary>Difficulty within its slot, from 1; the draft takes the highest that is admitted.</summary>
    public required int Rank { get; init; }

    /// <summary>Position of the body and the knee.</summary>
    public required string Position { get; init; }

    /// <summary>How the target muscle works.</summary>
    public required ContractionType Contraction { get; init; }

    /// <summary>What must be so before it is given.</summary>
    public required ExerciseNeeds Needs { get; init; }

    /// <summary>The dose to start with.</summary>
    public required ExerciseDose Start { get; init; }

    /// <summary>How the dose grows.</summary>
    public required DoseProgression Progression { get; init; }

    /// <summary>Time one repetition takes without its hold, for the time asked of the patient; in seconds.</summary>
    public required double RepetitionSeconds { get; init; }

    /// <summary>Whether it is done against added resistance, which a surgeon may forbid for a time.</summary>
    public required bool Resisted { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Source Source { get; init; }
}
