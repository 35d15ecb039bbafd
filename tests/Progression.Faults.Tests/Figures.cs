using System.Globalization;

namespace Progression.Faults.Tests;

/// <summary>The figures of a test, printed with it.</summary>
internal static class Figures
{
    /// <summary>Prints a line under the test's name.</summary>
    public static void Print(FormattableString line) => TestContext.Current.TestOutputHelper?.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    /// <summary>The value below which a share of them lies.</summary>
    public static double Share(IEnumerable<double> values, double share)
    {
        double[] ordered = [.. values.Order()];
        return ordered[Math.Min(ordered.Length - 1, (int)(share * ordered.Length))];
    }
}
