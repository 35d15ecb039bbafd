using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Entry;

/// <summary>Reads the size of a pad: "7.6x12.7cm", "76 x 127 mm", "round 7 cm". The last unit holds for both sides.</summary>
public static partial class PadText
{
    /// <summary>What is accepted, in words.</summary>
    public const string Allowed = "two sides with one unit as in 7.6x12.7cm, or round 7cm; cm or mm; each side from 0.1 to 50 cm";

    private static readonly QuantityForm<Length> Side = QuantityText.Length.Within(0.1m, 50) with
    {
        Name = "The pad's side",
        Units = [.. QuantityText.Length.Units.Where(unit => unit.Word is "cm" or "mm")],
    };

    /// <summary>Reads a pad.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    public static Entered<PadSize> Read(string field, string? text) => Read(field, text, Side);

    /// <summary>As <see cref="Read(string, string?)"/>, and takes a decimal comma, as on a screen.</summary>
    public static Entered<PadSize> ReadTyped(string field, string? text) => Read(field, text, Side with { TakesComma = true });

    private static Entered<PadSize> Read(string field, string? text, QuantityForm<Length> side)
    {
        string trimmed = (text ?? "").Trim(' ');
        if (trimmed.Length is 0 or > 64)
        {
            return Refuse(field, trimmed.Length == 0 ? "The pad is missing." : "The pad is too long a text.", text);
        }

        if (Disc().Match(trimmed) is { Success: true } disc)
        {
            return From(field, text, [side.Read(field, disc.Groups[1].Value)]);
        }

        if (Sides().Match(trimmed) is not { Success: true } sides)
        {
            return Refuse(field, "The pad is not two sides or a diameter.", text);
        }

        string width = sides.Groups[1].Value + (sides.Groups[2].Length > 0 ? sides.Groups[2].Value : sides.Groups[4].Value);
        return From(field, text, [side.Read(field, width), side.Read(field, sides.Groups[3].Value + sides.Groups[4].Value)]);
    }

    private static Entered<PadSize> From(string field, string? text, ImmutableArray<Entered<Length>> sides)
    {
        if (sides.SelectMany(side => side.Problems).FirstOrDefault() is { } problem)
        {
            return Refuse(field, problem.Wrong, text);
        }

        return Entered<PadSize>.Good(sides.Length == 1 ? PadSize.Round(sides[0].Value!) : PadSize.Rectangle(sides[0].Value!, sides[1].Value!));
    }

    private static Entered<PadSize> Refuse(string field, string wrong, string? found) =>
        Entered<PadSize>.Bad(new Problem(field, wrong, Allowed, Found.Of(found ?? "")));

    [GeneratedRegex(@"^round *([^a-z].*)\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Disc();

    [GeneratedRegex(@"^(-?[0-9.,]+) *(cm|mm)? *[x\u00D7] *(-?[0-9.,]+) *([a-z]*)\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Sides();
}
