using System.Collections.Immutable;

namespace Progression.Core.Statistics;

/// <summary>A weighted mixture of normal distributions.</summary>
/// <param name="Parts">The distributions, at least one; their weights add up to 1.</param>
public sealed record NormalMixture(ImmutableArray<NormalPart> Parts)
{
    private const int MostSteps = 60;

    /// <summary>A last step of this many standard deviations leaves an error of about its square.</summary>
    private const double LastStep = 1e-7;

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
        (double low, double high, double x, double least) = (double.PositiveInfinity, double.NegativeInfinity, 0, double.PositiveInfinity);
        foreach (NormalPart part in Parts)
        {
            double own = part.Mean + (z * part.StandardDeviation);
            (low, high, x) = (Math.Min(low, own), Math.Max(high, own), x + (part.Weight * own));
            least = Math.Min(least, part.StandardDeviation);
        }

        for (int step = 0; step < MostSteps && high - low > LastStep * LastStep * least; step++)
        {
            (double over, double density) = Against(x, probability);
            (low, high) = over > 0 ? (low, x) : (x, high);
            double next = x - (over / density);
            bool isInside = next >= low && next <= high;
            if (isInside && Math.Abs(next - x) <= LastStep * least)
            {
                return next;
            }

            x = isInside ? next : (low + high) / 2;
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
