namespace Progression.Core.Statistics;

/// <summary>
/// The standard normal distribution. The distribution function is summed from its Taylor series near zero and from the continued fraction of the tail
/// elsewhere (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14, from memory); the quantile is its inverse by bisection, then Newton steps.
/// </summary>
public static class NormalDistribution
{
    private const double SeriesTo = 3;

    /// <summary>Density at a point.</summary>
    public static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Probability of a value at most <paramref name="x"/>; NaN for NaN.</summary>
    public static double Probability(double x) =>
        double.IsNaN(x) ? double.NaN
        : Math.Abs(x) <= SeriesTo ? 0.5 + Series(x)
        : x < 0 ? Tail(-x)
        : 1 - Tail(x);

    /// <summary>The point under which the given share of the distribution lies; minus infinity for 0, infinity for 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The probability is not from 0 to 1, both included, or is NaN.</exception>
    public static double Quantile(double probability)
    {
        if (!(probability is >= 0 and <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "A probability is from 0 to 1.");
        }

        if (probability is 0 or 1)
        {
            return probability == 0 ? double.NegativeInfinity : double.PositiveInfinity;
        }

        return probability > 0.5 ? -LowerQuantile(1 - probability) : LowerQuantile(probability);
    }

    private static double LowerQuantile(double probability)
    {
        (double low, double high) = (-40, 0);
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Probability(middle) < probability ? (middle, high) : (low, middle);
        }

        double x = (low + high) / 2;
        for (int i = 0; i < 2 && Density(x) > 0; i++)
        {
            x -= (Probability(x) - probability) / Density(x);
        }

        return x;
    }

    private static double Series(double x)
    {
        double term = x, sum = x;
        for (int n = 3; Math.Abs(term) > 1e-18 * Math.Abs(sum) && n < 400; n += 2)
        {
            term *= x * x / n;
            sum += term;
        }

        return sum * Density(x);
    }

    private static double Tail(double x)
    {
        double fraction = 0;
        for (int k = 200; k >= 1; k--)
        {
            fraction = k / (x + fraction);
        }

        return Density(x) / (x + fraction);
    }
}
