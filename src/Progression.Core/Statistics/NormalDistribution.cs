namespace Progression.Core.Statistics;

/// <summary>
/// The standard normal distribution. The distribution function is summed from its Taylor series near zero and from the continued fraction of the tail
/// elsewhere (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11 and 26.2.14, from memory). Both are slow, so they are summed once at
/// evenly spaced nodes, and between nodes the function is its Taylor polynomial around the nearest one. The quantile is the inverse: a rough start
/// (26.2.23, from memory), then Newton steps with a correction for curvature.
/// </summary>
public static class NormalDistribution
{
    private const double SeriesTo = 3;
    private const int NodesTo = 9;
    private const int NodesPerUnit = 8;
    private const int Degree = 14;

    /// <summary>For each node the coefficients of its Taylor polynomial, highest power first.</summary>
    private static readonly double[] Nodes = [.. Enumerable.Range(-NodesTo * NodesPerUnit, (2 * NodesTo * NodesPerUnit) + 1).SelectMany(node => Taylor((double)node / NodesPerUnit))];

    /// <summary>Density at a point.</summary>
    public static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Probability of a value at most <paramref name="x"/>; NaN for NaN.</summary>
    public static double Probability(double x)
    {
        if (!(Math.Abs(x) < NodesTo))
        {
            return Summed(x);
        }

        int node = (int)Math.Round(x * NodesPerUnit);
        double away = x - ((double)node / NodesPerUnit);
        ReadOnlySpan<double> factors = Nodes.AsSpan((node + (NodesTo * NodesPerUnit)) * (Degree + 1), Degree + 1);
        double sum = factors[0];
        for (int i = 1; i <= Degree; i++)
        {
            sum = (sum * away) + factors[i];
        }

        return sum;
    }

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

    /// <summary>The quantile of a probability up to one half.</summary>
    private static double LowerQuantile(double probability)
    {
        double t = Math.Sqrt(-2 * Math.Log(probability));
        double x = -(t - ((2.515517 + (t * (0.802853 + (t * 0.010328)))) / (1 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308))))))));
        for (int i = 0; i < 4 && Density(x) > 0; i++)
        {
            double step = (Probability(x) - probability) / Density(x);
            x -= step / (1 + (x * step / 2));
        }

        return x;
    }

    private static double Summed(double x) =>
        double.IsNaN(x) ? double.NaN
        : Math.Abs(x) <= SeriesTo ? 0.5 + Series(x)
        : x < 0 ? Tail(-x)
        : 1 - Tail(x);

    /// <summary>Taylor coefficients, highest power first. Those of the density follow from its derivative being minus x times itself.</summary>
    private static double[] Taylor(double x)
    {
        double[] factors = new double[Degree + 1];
        (double before, double density) = (0, Density(x));
        factors[Degree] = Summed(x);
        for (int power = 1; power <= Degree; power++)
        {
            factors[Degree - power] = density / power;
            (before, density) = (density, -((x * density) + before) / power);
        }

        return factors;
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
        for (int k = 120; k >= 1; k--)
        {
            fraction = k / (x + fraction);
        }

        return Density(x) / (x + fraction);
    }
}
