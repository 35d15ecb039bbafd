using System.Globalization;

namespace Progression.Core.Quantities;

/// <summary>The one place where numbers become text: decimal point, no grouping, whatever the culture of the machine.</summary>
public static class Number
{
    /// <summary>A number with at most the given count of decimals and no trailing zeros; "-0" is written "0".</summary>
    public static string Text(double value, int decimals = 3)
    {
        string text = Math.Round(value, decimals, MidpointRounding.AwayFromZero)
            .ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
        return text == "-0" ? "0" : text;
    }

    /// <summary>A change with its sign: "+3", "-1.8", "0".</summary>
    public static string Signed(double value, int decimals = 3) => value > 0 ? "+" + Text(value, decimals) : Text(value, decimals);
}
