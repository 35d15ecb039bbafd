using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>The voluntary contraction that goes along with stim: one for each stimulated one, on the same days, held as long as the current is on.</summary>
public static class PairedWork
{
    /// <summary>The cell of the exercise along with a week of stim.</summary>
    /// <param name="exercise">The exercise of the lane.</param>
    /// <param name="stim">The stim of the week; not a stopped one.</param>
    /// <param name="regimen">The regimen, for its on-time; null when not known.</param>
    public static ActiveCell For(Exercise exercise, StimCell stim, Regimen? regimen)
    {
        // A session longer than a set may be is split into equal sets.
        int sets = 1 + ((stim.Contractions - 1) / ExerciseDose.MostRepetitions);
        int repetitions = (stim.Contractions + sets - 1) / sets;
        ExerciseDose dose = ExerciseDose.InRepetitions(sets, repetitions, stim.SessionsPerDay) with
        {
            Days = stim.Days,
            Hold = regimen is { On.IsOpen: false } ? regimen.On.Value : exercise.Start.Hold,
        };
        return new ActiveCell(exercise.Id, dose);
    }
}
