using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Core.Measures;

/// <summary>An assessment beside those of its case that came before it.</summary>
internal sealed class EarlierReadings(Case patient, Assessment now)
{
    private readonly ImmutableArray<Assessment> _since = [.. patient.Assessments.Where(one => one.Date < now.Date).OrderByDescending(one => one.Date)];

    /// <summary>The assessment looked at.</summary>
    internal Assessment Now => now;

    /// <summary>The last one before it since the operation; null when there is none.</summary>
    internal Assessment? Previous => _since.FirstOrDefault();

    /// <summary>The last one before it since the operation that has a measure as entered; null when there is none.</summary>
    internal Assessment? Last(string measure) => _since.FirstOrDefault(one => one.Readings.ContainsKey(measure));

    /// <summary>The same, or the one before the operation when there is none since: for what the operation does not change.</summary>
    internal Assessment? LastOrPreOp(string measure) => Last(measure) ?? (patient.PreOp?.Readings.ContainsKey(measure) == true ? patient.PreOp : null);

    /// <summary>An assessment as rules read it.</summary>
    internal KneeState At(Assessment one) => KneeState.At(one, patient);
}
