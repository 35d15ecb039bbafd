namespace Progression.Core.Statistics;

/// <summary>The middle of a group of values and the two between which its middle half lies.</summary>
/// <param name="Lower">A quarter lies under it.</param>
/// <param name="Median">Half lies under it.</param>
/// <param name="Upper">Three quarters lie under it.</param>
/// <remarks>Between two values it is drawn straight from one to the next: type 7 of Hyndman and Fan 1996, Am Stat 50:361 (from memory).</remarks>
public sealed record Quartiles(double Lower, double Median, double Upper)
{
    /// <summary>The quartiles; null where there is no value.</summary>
    public static Quartiles? Of(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0 ? null : new(At(sorted, 0.25), At(sorted, 0.5), At(sorted, 0.75));
    }

    private static double At(double[] sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int under = (int)Math.Floor(place);
        return under + 1 == sorted.Length ? sorted[under] : sorted[under] + ((place - under) * (sorted[under + 1] - sorted[under]));
    }
}
