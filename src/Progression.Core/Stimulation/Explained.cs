using System.Collections.Immutable;
using System.Globalization;

namespace Progression.Core.Stimulation;

/// <summary>
/// A number that remembers how it was got, or what is missing to get it. Arithmetic keeps all three: value, words, gaps.
/// </summary>
internal sealed class Explained
{
    private readonly Strength _strength;

    private Explained(double? value, string words, Strength strength, ImmutableArray<string> gaps, ImmutableArray<string> restsOn) =>
        (Value, Words, _strength, Gaps, RestsOn) = (value, words, strength, gaps, restsOn);

    /// <summary>How firmly an expression holds together when it becomes part of another.</summary>
    private enum Strength
    {
        Sum,
        Product,
        Whole,
    }

    /// <summary>The number; null when a setting is missing or the number does not apply.</summary>
    internal double? Value { get; }

    /// <summary>The expression with its numbers.</summary>
    internal string Words { get; }

    /// <summary>Why there is no number; null when there is one.</summary>
    internal string? WhyNot => Value is not null ? null : WhyNone ?? "not given: " + string.Join(", ", Gaps);

    /// <summary>Which readings of ambiguous settings it rests on, without repetition.</summary>
    internal ImmutableArray<string> RestsOn { get; }

    /// <summary>A setting, which may be missing.</summary>
    internal static Explained Given(string name, double? value, string unit) =>
        value is null ? Missing(name) : new(value, Label(name, value.Value, unit), Strength.Whole, [], []);

    /// <summary>A setting that is not given.</summary>
    internal static Explained Missing(string name) => new(null, "", Strength.Whole, [name], []);

    /// <summary>A number that settings of this kind do not have.</summary>
    internal static Explained NotApplicable(string why) => new(null, "", Strength.Whole, [], []) { WhyNone = why };

    internal static Explained Sqrt(Explained of) => new(of.Value is { } value ? Math.Sqrt(value) : null, $"sqrt({of.Words})", Strength.Whole, of.Gaps, of.RestsOn);

    /// <summary>A number got from two others in a way that words tell better than signs.</summary>
    internal static Explained Told(Explained first, Explained second, Func<double, double, (double Value, string Words)> tell)
    {
        (double Value, string Words)? told = first.Value is { } a && second.Value is { } b ? tell(a, b) : null;
        return new(told?.Value, told?.Words ?? "", Strength.Whole, Union(first.Gaps, second.Gaps), Union(first.RestsOn, second.RestsOn));
    }

    public static implicit operator Explained(double constant) => new(constant, Digits(constant), Strength.Whole, [], []);

    public static Explained operator +(Explained a, Explained b) => Join(a, "+", b, Strength.Sum, Strength.Sum, (x, y) => x + y);

    public static Explained operator -(Explained a, Explained b) => Join(a, "-", b, Strength.Sum, Strength.Product, (x, y) => x - y);

    public static Explained operator *(Explained a, Explained b) => Join(a, "x", b, Strength.Product, Strength.Product, (x, y) => x * y);

    public static Explained operator /(Explained a, Explained b) => Join(a, "/", b, Strength.Product, Strength.Whole, (x, y) => x / y);

    /// <summary>The same, resting on one more reading of an ambiguous setting.</summary>
    internal Explained Resting(string reading) => new(Value, Words, _strength, Gaps, Union(RestsOn, [reading]));

    /// <summary>Not to be had, for want of one more setting.</summary>
    internal Explained Lacking(string name) => new(null, "", Strength.Whole, Union(Gaps, [name]), []);

    /// <summary>The same as a part of further reckoning, under its own name.</summary>
    internal Explained Named(string name, string unit) =>
        new(Value, Value is { } value ? Label(name, value, unit) : "", Strength.Whole, Gaps, RestsOn);

    /// <summary>A number to five significant digits, whole numbers in full.</summary>
    internal static string Digits(double value)
    {
        if (value == Math.Floor(value) && Math.Abs(value) < 1e12)
        {
            return value.ToString("0", CultureInfo.InvariantCulture);
        }

        int decimals = Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        return Quantities.Number.Text(value, decimals);
    }

    private static string Label(string name, double value, string unit) => unit.Length == 0 ? $"{name} {Digits(value)}" : $"{name} {Digits(value)} {unit}";

    private static Explained Join(Explained a, string sign, Explained b, Strength left, Strength right, Func<double, double, double> join)
    {
        double? value = a.Value is { } x && b.Value is { } y ? join(x, y) : null;
        string words = $"{a.Inside(left)} {sign} {b.Inside(right)}";
        return new(value, words, left, Union(a.Gaps, b.Gaps), Union(a.RestsOn, b.RestsOn));
    }

    private static ImmutableArray<string> Union(ImmutableArray<string> a, ImmutableArray<string> b) => b.IsEmpty ? a : [.. a.Union(b)];

    /// <summary>The settings that are not given, without repetition.</summary>
    private ImmutableArray<string> Gaps { get; }

    /// <summary>Why such a number does not exist; null where it does.</summary>
    private string? WhyNone { get; init; }

    private string Inside(Strength needed) => _strength < needed ? $"({Words})" : Words;
}
