using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>The last set of one session, as it was logged.</summary>
/// <param name="Date">The day of the session.</param>
/// <param name="Repetitions">Repetitions done in good form; null when not recorded.</param>
/// <param name="Load">The load; null when not recorded.</param>
public sealed record LoggedSet(DateOnly Date, int? Repetitions, Mass? Load);
