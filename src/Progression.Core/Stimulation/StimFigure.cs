using System.Collections.Immutable;

namespace Progression.Core.Stimulation;

/// <summary>One computed figure with the way it was got, or the reason why it was not.</summary>
public sealed record StimFigure
{
    internal StimFigure(FigureKind kind, Explained got)
    {
        Kind = kind;
        Value = got.Value;
        How = got.Value is null ? null : got.Words;
        WhyNot = got.WhyNot;
        RestsOn = got.Value is null ? [] : got.RestsOn;
    }

    /// <summary>What it is.</summary>
    public FigureKind Kind { get; }

    /// <summary>The value in the unit of its kind; null when something it needs is missing.</summary>
    public double? Value { get; }

    /// <summary>The value to five significant digits with its unit, as shown to people; null when there is no value.</summary>
    public string? Shown => Value is { } value ? $"{Explained.Digits(value)} {Kind.Unit}".TrimEnd() : null;

    /// <summary>The formula in words with its numbers; null when there is no value.</summary>
    public string? How { get; }

    /// <summary>What is missing or does not apply; null when there is a value.</summary>
    public string? WhyNot { get; }

    /// <summary>The readings of ambiguous settings on which the value rests: ramps, width, last rest.</summary>
    public ImmutableArray<string> RestsOn { get; }
}
