using System.Collections.Immutable;

namespace Progression.Core.Statistics;

/// <summary>A weighted mixture of normal distributions.</summary>
/// <param name="Parts">The distributions, at least one; their weights add up to 1.</param>
public sealed record NormalMixture(ImmutableArray<NormalPart> Parts)
{
    private const int MostSteps = 60;
    private const double Close = 1e-13;

    /// <summary>The mean.</summary>
    public double Mean
    {
        get
        {
            double sum = 0;
            foreach (NormalPart part in Parts)
            {
                sum += part.Weight * part.Mean;
            }

            return sum;
        }
    }

    /// <summary>The standard deviation.</summary>
    public double StandardDeviation
    {
        get
        {
            (double mean, double sum) = (Mean, 0);
            foreach (NormalPart part in Parts)
            {
                double away = part.Mean - mean;
                sum += part.Weight * ((part.StandardDeviation * part.StandardDeviation) + (away * away));
            }

            return Math.Sqrt(sum);
        }
    }

    /// <summary>The same with an independent normal error added.</summary>
    /// <param name="standardError">Its standard deviation.</param>
    public NormalMixture WithError(double standardError) =>
        new([.. Parts.Select(part => part with { StandardDeviation = Math.Sqrt((part.StandardDeviation * part.StandardDeviation) + (standardError * standardError)) })]);

    /// <summary>Probability of a value at most <paramref name="x"/>.</summary>
    public double AtMost(double x)
    {
        double sum = 0;
        foreach (NormalPart part in Parts)
        {
            sum += part.Weight * NormalDistribution.Probability((x - part.Mean) / part.StandardDeviation);
        }

        return Math.Min(1, sum);
    }

    /// <summary>Probability of a value at least <paramref name="x"/>.</summary>
    public double AtLeast(double x)
    {
        double sum = 0;
        foreach (NormalPart part in Parts)
        {
            sum += part.Weight * NormalDistribution.Probability((part.Mean - x) / part.StandardDeviation);
        }

        return Math.Min(1, sum);
    }

    /// <summary>The point under which the given share lies; Newton's steps, halving where they would leave the interval of the parts' own quantiles.</summary>
    /// <param name="probability">Over 0 and under 1.</param>
    public double Quantile(double probability)
    {
        double z = NormalDistribution.Quantile(probability);
        (double low, double high, double x) = (double.PositiveInfinity, double.NegativeInfinity, 0);
        foreach (NormalPart part in Parts)
        {
            double own = part.Mean + (z * part.StandardDeviation);
            (low, high, x) = (Math.Min(low, own), Math.Max(high, own), x + (part.Weight * own));
        }

        double close = Close * Math.Max(Math.Abs(low), Math.Abs(high));
        for (int step = 0; step < MostSteps && high - low > close; step++)
        {
            (double over, double density) = Against(x, probability);
            (low, high) = over > 0 ? (low, x) : (x, high);
            double next = x - (over / density);
            next = next > low && next < high ? next : (low + high) / 2;
            if (Math.Abs(next - x) <= close)
            {
                return next;
            }

            x = next;
        }

        return x;
    }

    private (double Over, double Density) Against(double x, double probability)
    {
        (double sum, double density) = (-probability, 0);
        foreach (NormalPart part in Parts)
        {
            double at = (x - part.Mean) / part.StandardDeviation;
            sum += part.Weight * NormalDistribution.Probability(at);
            density += part.Weight * NormalDistribution.Density(at) / part.StandardDeviation;
        }

        return (sum, density);
    }
}

/// <summary>One distribution of a mixture.</summary>
/// <param name="Weight">Its share, 0 to 1.</param>
/// <param name="Mean">Its mean.</param>
/// <param name="StandardDeviation">Its standard deviation, over 0.</param>
public sealed record NormalPart(double Weight, double Mean, double StandardDeviation);
