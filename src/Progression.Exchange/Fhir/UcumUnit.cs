using System.Collections.Immutable;

namespace Progression.Exchange.Fhir;

/// <summary>A unit in UCUM, the code system of units that FHIR asks for. Letters are case-sensitive.</summary>
/// <param name="Code">The UCUM code: "N.m", "deg", "{score}".</param>
/// <param name="Shown">The unit as people write it; null where the code says it.</param>
public sealed record UcumUnit(string Code, string? Shown)
{
    /// <summary>The URI of the code system.</summary>
    public const string System = "http://unitsofmeasure.org";

    private const string PlainNumber = "1";

    // By the ids of the library's measures that are counts; every other plain number is a score.
    private static readonly ImmutableArray<string> Counts = ["straight_leg_raises", "chair_stands"];

    private static readonly ImmutableSortedDictionary<string, string> Codes = new Dictionary<string, string>
    {
        ["deg"] = "deg",
        ["Nm"] = "N.m",
        ["N"] = "N",
        ["cm"] = "cm",
        ["m"] = "m",
        ["s"] = "s",
        ["m/s"] = "m/s",
        ["kg"] = "kg",
        ["%"] = "%",
        ["Nm/kg"] = "N.m/kg",
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    // Exact by definition: the international foot, inch, yard, pound, and the standard acceleration of free fall
    // (NIST Special Publication 811, appendix B.8). What is not exact is not converted.
    private static readonly ImmutableArray<(string Code, string Unit, decimal Factor)> Conversions =
    [
        ("N.cm", "Nm", 0.01m),
        ("[ft_i].[lbf_av]", "Nm", 1.3558179483314004m),
        ("[lbf_av].[ft_i]", "Nm", 1.3558179483314004m),
        ("kN", "N", 1000m),
        ("[lbf_av]", "N", 4.4482216152605m),
        ("kgf", "N", 9.80665m),
        ("mm", "cm", 0.1m),
        ("m", "cm", 100m),
        ("[in_i]", "cm", 2.54m),
        ("[ft_i]", "cm", 30.48m),
        ("cm", "m", 0.01m),
        ("km", "m", 1000m),
        ("[ft_i]", "m", 0.3048m),
        ("[yd_i]", "m", 0.9144m),
        ("ms", "s", 0.001m),
        ("min", "s", 60m),
        ("cm/s", "m/s", 0.01m),
        ("[ft_i]/s", "m/s", 0.3048m),
        ("g", "kg", 0.001m),
        ("[lb_av]", "kg", 0.45359237m),
        ("[oz_av]", "kg", 0.028349523125m),
    ];

    /// <summary>The unit in which a measure leaves.</summary>
    /// <param name="measure">The id of the measure.</param>
    /// <param name="unit">Its unit in the library; "1" for a plain number.</param>
    /// <returns>Null for a unit that has no UCUM code here, as a clinic's own measure may have.</returns>
    public static UcumUnit? Of(string measure, string unit) =>
        unit == PlainNumber ? new UcumUnit(Counts.Contains(measure) ? "{repetitions}" : "{score}", null)
        : Codes.TryGetValue(unit, out string? code) ? new UcumUnit(code, code == unit ? null : unit)
        : null;

    /// <summary>By how much a value with a UCUM code is multiplied to be in a unit of the library; null when it cannot be.</summary>
    public static decimal? Factor(string code, string unit) =>
        unit == PlainNumber ? (code == PlainNumber || IsAnnotation(code) ? 1 : null)
        : Codes.GetValueOrDefault(unit) == code ? 1
        : Conversions.Where(one => one.Code == code && one.Unit == unit).Select(one => (decimal?)one.Factor).FirstOrDefault();

    /// <summary>The UCUM codes that can be read for a unit of the library, in words.</summary>
    public static string Allowed(string unit) => unit == PlainNumber
        ? "1, or a word in braces such as {score}"
        : string.Join(", ", Conversions.Where(one => one.Unit == unit).Select(one => one.Code).Prepend(Codes.GetValueOrDefault(unit) ?? unit));

    // {score}: a plain number with a word that UCUM does not read.
    private static bool IsAnnotation(string code) =>
        code.Length > 2 && code[0] == '{' && code[^1] == '}' && code.AsSpan(1, code.Length - 2).IndexOfAny('{', '}') < 0 && code.All(c => c is > ' ' and <= '~');
}
