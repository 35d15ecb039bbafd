using System.Globalization;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>One set of a session, as it was logged.</summary>
/// <param name="Date">The day of the session.</param>
/// <param name="Repetitions">Repetitions done in good form; null when not recorded.</param>
/// <param name="Load">The load; null when not recorded.</param>
public sealed record LoggedSet(DateOnly Date, int? Repetitions, Mass? Load)
{
    /// <summary>The day as shown in reasons: "2026-11-12".</summary>
    internal string Day => Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
