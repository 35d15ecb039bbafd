namespace Progression.Core.Statistics;

/// <summary>A share of a number of trials, with the interval of Wilson's score, which keeps between 0 and 1 and is fair for few trials.</summary>
/// <param name="Trials">How many, over 0.</param>
/// <param name="Hits">How many of them, 0 to <paramref name="Trials"/>.</param>
/// <remarks>Wilson 1927, J Am Stat Assoc 22:209 (from memory); without correction for continuity. The trials are taken to be independent.</remarks>
public sealed record Proportion(int Trials, int Hits)
{
    /// <summary>The share, 0 to 1.</summary>
    public double Share => (double)Hits / Trials;

    /// <summary>The interval.</summary>
    /// <param name="level">Its level, over 0 and under 1.</param>
    public (double Low, double High) Interval(double level = 0.95)
    {
        double z = NormalDistribution.Quantile(1 - ((1 - level) / 2));
        double more = z * z / Trials;
        double middle = (Share + (more / 2)) / (1 + more);
        double half = z * Math.Sqrt((Share * (1 - Share) / Trials) + (more / (4 * Trials))) / (1 + more);
        return (Math.Max(0, middle - half), Math.Min(1, middle + half));
    }
}
