using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Measures;

/// <summary>One measure over all visits.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Values">Its value at each visit, in its unit; null where it was not measured.</param>
/// <param name="Last">The last two values since the operation; null when there are not two.</param>
/// <param name="SinceFirst">The first value since the operation against the newest; null when there are not two.</param>
public sealed record ComparisonRow(Measure Measure, ImmutableArray<double?> Values, Change? Last, Change? SinceFirst);
