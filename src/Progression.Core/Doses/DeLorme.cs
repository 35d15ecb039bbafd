using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Doses;

/// <summary>Three sets of ten, rising to the load that can be lifted ten times and no more.</summary>
public static class DeLorme
{
    private const int Repetitions = 10;

    private static readonly ImmutableArray<double> Shares = [0.50, 0.75, 1.00];

    /// <summary>Where the method comes from; the paper itself was not opened.</summary>
    public static Source Source { get; } = new("DeLorme: ten repetitions at 50, 75 and 100 % of the ten-repetition maximum", Standing.Seen);

    /// <summary>The sets of a session, first to last.</summary>
    /// <param name="tenRepetitionMaximum">The load that can be lifted ten times and no more, as last tested.</param>
    public static ImmutableArray<WorkSet> Sets(Mass tenRepetitionMaximum) =>
        [.. Shares.Select(share => new WorkSet(Repetitions, Mass.FromKilograms(tenRepetitionMaximum.Kilograms * share)))];
}
