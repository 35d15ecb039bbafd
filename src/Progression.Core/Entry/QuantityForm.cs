using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Progression.Core.Quantities;

namespace Progression.Core.Entry;

/// <summary>How one kind of quantity is typed: its unit words and its range. Reads text, and refuses it with a reason.</summary>
/// <typeparam name="T">The quantity.</typeparam>
public sealed partial record QuantityForm<T>
    where T : class
{
    private const int LongestText = 64;
    private const int MostDigits = 15;

    /// <summary>The quantity in words, to begin a sentence: "The duration".</summary>
    public required string Name { get; init; }

    /// <summary>The unit in which the range stands; its factor is 1.</summary>
    public required string Unit { get; init; }

    /// <summary>Every accepted way to write a unit.</summary>
    public required ImmutableArray<UnitWord> Units { get; init; }

    /// <summary>The least accepted amount in <see cref="Unit"/>, included.</summary>
    public required decimal Least { get; init; }

    /// <summary>The greatest accepted amount in <see cref="Unit"/>, included.</summary>
    public required decimal Most { get; init; }

    /// <summary>Makes the quantity from an amount in <see cref="Unit"/> that lies in the range.</summary>
    public required Func<double, T> Make { get; init; }

    /// <summary>Whether one or two decimals may stand behind a comma, as people in many countries type them; files keep to the point.</summary>
    public bool TakesComma { get; init; }

    /// <summary>What is accepted, in words, with the range and both ends.</summary>
    public string Allowed => $"{UnitsAllowed}, from {Text(Least)} to {Text(Most)}{(Unit.Length == 0 ? "" : " " + Unit)}";

    /// <summary>The same quantity in a narrower range, in <see cref="Unit"/>, both ends included.</summary>
    public QuantityForm<T> Within(decimal least, decimal most) => this with { Least = least, Most = most };

    /// <summary>The quantity as it is typed into a field that names the unit: the unit may be left out, and a decimal comma is taken.</summary>
    public QuantityForm<T> AsTyped() => this with { Units = [new UnitWord(""), .. Units.Where(unit => unit.Word.Length > 0)], TakesComma = true };

    /// <summary>Whether a text that is read carries a unit of another size than <see cref="Unit"/>, so that another number is kept than was typed.</summary>
    public bool IsConverted(string? text) => Parted(text) is { Success: true } parted && WordOf(parted) is { Factor: not 1 };

    /// <summary>
    /// Reads a number with a unit: "15s", "0.25 ms". Spaces around the number and the unit do not matter. The number is
    /// plain decimal with a point, or where the form says so a comma; no exponent, no grouping, no plus sign; a minus only where the range goes below zero.
    /// </summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    public Entered<T> Read(string field, string? text)
    {
        string trimmed = (text ?? "").Trim(' ');
        if (trimmed.Length == 0)
        {
            return Refuse(field, "is missing.", text);
        }

        Match match = Parted(text);
        if (!match.Success)
        {
            return Refuse(field, WhyNoNumber(trimmed), text);
        }

        if (WordOf(match) is not { } word)
        {
            return Refuse(field, match.Groups[2].Length == 0 ? "has no unit." : "has a unit that does not fit.", text);
        }

        string digits = match.Groups[1].Value;
        if (digits.Count(char.IsAsciiDigit) > MostDigits)
        {
            return Refuse(field, "has too many digits.", text);
        }

        decimal amount = decimal.Parse(digits, System.Globalization.CultureInfo.InvariantCulture) * word.Factor;
        return amount < Least || amount > Most
            ? Refuse(field, "is out of range.", text)
            : Entered<T>.Good(Make((double)amount));
    }

    private string UnitsAllowed
    {
        get
        {
            string[] shown = [.. Units.Where(unit => unit.IsShown && unit.Word.Length > 0).Select(unit => unit.Word)];
            string words = shown.Length < 2 ? string.Concat(shown) : $"{string.Join(", ", shown[..^1])} or {shown[^1]}";
            bool bare = Units.Any(unit => unit.Word.Length == 0);
            return shown.Length == 0 ? "a number" : bare ? $"a number, alone or with {words}" : $"a number with {words}";
        }
    }

    private static string Text(decimal value) => Number.Text((double)value);

    private Match Parted(string? text)
    {
        string trimmed = (text ?? "").Trim(' ');
        return trimmed.Length > LongestText ? Match.Empty : NumberThenUnit().Match(TakesComma ? FewDecimals().Replace(trimmed, "$1.$2") : trimmed);
    }

    private UnitWord? WordOf(Match parted) => Units.FirstOrDefault(unit => unit.Word.Equals(parted.Groups[2].Value, StringComparison.OrdinalIgnoreCase));

    private string WhyNoNumber(string text) =>
        DecimalComma().IsMatch(text) ? (TakesComma ? "has a comma that may part thousands or decimals; write a point." : "has a decimal comma; write a point.")
        : text.Length > LongestText ? "is too long."
        : "is not a plain number with its unit.";

    private Entered<T> Refuse(string field, string wrong, string? found) =>
        Entered<T>.Bad(new Problem(field, $"{Name} {wrong}", Allowed, Found.Of(found ?? "")));

    // [0-9], not \d: digits of other scripts are refused. The no-break spaces come with pasted text.
    [GeneratedRegex(@"^(-?[0-9]+(?:\.[0-9]+)?)[ \u00A0\u202F]*([^0-9.,+\-\s\p{C}](?:[^0-9,+\p{C}]{0,15}[^\s\p{C}])?)?\z", RegexOptions.CultureInvariant)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"^(-?[0-9]+),([0-9]{1,2})(?![0-9,.])", RegexOptions.CultureInvariant)]
    private static partial Regex FewDecimals();

    [GeneratedRegex(@"^-?[0-9]+,[0-9]+[^0-9,]*\z", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalComma();
}
