namespace Progression.Core.Doses;

/// <summary>Voluntary work of one muscle group over a time.</summary>
/// <param name="Contractions">Repetitions; an exercise dosed in minutes adds none.</param>
/// <param name="Seconds">Time under contraction: holds, and the movement of dynamic repetitions.</param>
/// <param name="KilogramRepetitions">Sum of load times repetitions, for loads given in kilograms only.</param>
public sealed record MuscleWork(int Contractions, double Seconds, double KilogramRepetitions)
{
    /// <summary>No work.</summary>
    public static MuscleWork None { get; } = new(0, 0, 0);

    /// <summary>Both together.</summary>
    public MuscleWork Plus(MuscleWork other) =>
        new(Contractions + other.Contractions, Seconds + other.Seconds, KilogramRepetitions + other.KilogramRepetitions);

    /// <summary>The same work done a number of times.</summary>
    public MuscleWork Times(int times) => new(Contractions * times, Seconds * times, KilogramRepetitions * times);
}
