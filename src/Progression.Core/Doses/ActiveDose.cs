using Progression.Core.Library;

namespace Progression.Core.Doses;

/// <summary>Arithmetic of active work. Standard definitions: sets x repetitions x times a day; no source needed.</summary>
public static class ActiveDose
{
    /// <summary>
    /// Work of the exercise's muscle on one of its days. A repetition is under contraction for its hold, and for its movement too when it is dynamic;
    /// an isometric repetition without a stated hold counts its repetition time. An exercise dosed in minutes adds no counted contractions and no time
    /// under contraction, because how much of a walk or a ride the muscle works is not known.
    /// </summary>
    public static MuscleWork OfDay(Exercise exercise, ExerciseDose dose)
    {
        if (exercise.Contraction == ContractionType.Passive || exercise.Muscle == MuscleGroup.None)
        {
            return MuscleWork.None;
        }

        int repetitions = dose.RepetitionsPerDay;
        double hold = dose.Hold?.Seconds ?? 0;
        double each = exercise.Contraction == ContractionType.Isometric
            ? (hold > 0 ? hold : exercise.RepetitionSeconds)
            : hold + exercise.RepetitionSeconds;
        return new MuscleWork(repetitions, repetitions * each, repetitions * (dose.Load?.Mass?.Kilograms ?? 0));
    }

    /// <summary>Seconds of the patient's time on one of its days: movement, holds and the rest between sets.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="dose">Its dose.</param>
    /// <param name="restBetweenSets">Rest between two sets, in seconds.</param>
    public static double SecondsOfDay(Exercise exercise, ExerciseDose dose, double restBetweenSets)
    {
        if (dose.Bout is not null)
        {
            return dose.Bout.Seconds * dose.TimesPerDay;
        }

        double each = (dose.Hold?.Seconds ?? 0) + exercise.RepetitionSeconds;
        return (dose.RepetitionsPerDay * each) + ((dose.Sets - 1) * dose.TimesPerDay * restBetweenSets);
    }
}
