using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>One set to be done.</summary>
/// <param name="Repetitions">Repetitions; null for as many as can be done in good form.</param>
/// <param name="Load">The load.</param>
public sealed record WorkSet(int? Repetitions, Mass Load);
