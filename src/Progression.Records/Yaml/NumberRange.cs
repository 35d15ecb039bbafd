using System.Globalization;
using System.Text.RegularExpressions;
using Progression.Core.Quantities;

namespace Progression.Records.Yaml;

/// <summary>The numbers a field takes, both ends included.</summary>
/// <param name="Least">The least number.</param>
/// <param name="Most">The greatest number.</param>
/// <param name="Unit">The unit symbol, which is not written in the file; "1" for a plain number.</param>
internal sealed partial record NumberRange(double Least, double Most, string Unit)
{
    /// <summary>What is allowed, in words: "a number from 0 to 160 deg".</summary>
    public string Words(bool whole) =>
        $"a {(whole ? "whole " : "")}number from {Number.Text(Least)} to {Number.Text(Most)}{(Unit == "1" ? "" : " " + Unit)}";

    /// <summary>A number written as digits with at most one decimal point and one leading minus sign; null for anything else, exponents included.</summary>
    public static double? Read(string text) => text.Length <= 15 && Plain().IsMatch(text)
        ? double.Parse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture)
        : null;

    /// <summary>Whether the text is a number but for a comma in the place of the point.</summary>
    public static bool HasComma(string text) => text.Count(c => c == ',') == 1 && Read(text.Replace(',', '.')) is not null;

    /// <summary>Whether a number lies in the range.</summary>
    public bool Takes(double number) => number >= Least && number <= Most;

    [GeneratedRegex(@"^-?[0-9]+(\.[0-9]+)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
