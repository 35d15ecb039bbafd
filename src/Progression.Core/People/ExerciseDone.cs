using System.Collections.Immutable;
using Progression.Core.Quantities;

namespace Progression.Core.People;

/// <summary>An exercise as it was done in one session.</summary>
/// <param name="Exercise">The id of the exercise in the library.</param>
/// <param name="Sets">The sets in the order in which they were done; empty for an exercise done by the clock.</param>
public sealed record ExerciseDone(string Exercise, ImmutableArray<SetDone> Sets)
{
    /// <summary>How long, for an exercise done by the clock; null otherwise.</summary>
    public Duration? Time { get; init; }
}

/// <summary>One set.</summary>
/// <param name="Repetitions">Repetitions done in good form; null when not recorded.</param>
/// <param name="Load">The load; null when not recorded or there was none.</param>
public sealed record SetDone(int? Repetitions, Mass? Load);
