namespace Progression.App.Compare;

/// <summary>A row of values as a row of bars. Better is always up, so that every row reads alike.</summary>
public static class Sparkline
{
    private const string Bars = "▁▂▃▄▅▆▇█";

    /// <summary>Stands for a visit at which nothing was measured.</summary>
    public const char Gap = '·';

    /// <summary>A bar for each value, from the worst to the best of them; a middle bar where all are alike.</summary>
    /// <param name="values">The values, oldest first; null where not measured.</param>
    /// <param name="higherIsBetter">Whether more is better.</param>
    public static string Of(IReadOnlyList<double?> values, bool higherIsBetter)
    {
        List<double> known = [.. values.OfType<double>()];
        if (known.Count == 0)
        {
            return new string(Gap, values.Count);
        }

        (double least, double most) = (known.Min(), known.Max());
        return string.Concat(values.Select(value => value is double one ? Bar(one, least, most, higherIsBetter) : Gap));
    }

    private static char Bar(double value, double least, double most, bool higherIsBetter)
    {
        if (most <= least)
        {
            return Bars[Bars.Length / 2];
        }

        double share = (value - least) / (most - least);
        return Bars[(int)Math.Round((higherIsBetter ? share : 1 - share) * (Bars.Length - 1), MidpointRounding.AwayFromZero)];
    }
}
