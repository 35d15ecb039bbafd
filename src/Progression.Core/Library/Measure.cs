namespace Progression.Core.Library;

/// <summary>Which way a measure improves.</summary>
public enum Direction
{
    /// <summary>More is better.</summary>
    HigherIsBetter,

    /// <summary>Less is better.</summary>
    LowerIsBetter,
}

/// <summary>The scale on which a measure's error is constant.</summary>
public enum ErrorScale
{
    /// <summary>The measure's own unit.</summary>
    Linear,

    /// <summary>The natural logarithm: the error is a share of the value.</summary>
    Logarithmic,

    /// <summary>Steps; no standard error.</summary>
    Ordinal,
}

/// <summary>A thing that is measured, with what may be entered for it and how far two readings can differ by chance.</summary>
public sealed record Measure
{
    /// <summary>The permanent id: "flexion_active".</summary>
    public required string Id { get; init; }

    /// <summary>Its name.</summary>
    public required string Title { get; init; }

    /// <summary>The unit symbol it is entered and shown in.</summary>
    public required string Unit { get; init; }

    /// <summary>Which way it improves.</summary>
    public required Direction Better { get; init; }

    /// <summary>Least value accepted, included.</summary>
    public required double Least { get; init; }

    /// <summary>Most value accepted, included.</summary>
    public required double Most { get; init; }

    /// <summary>Whether only whole numbers are accepted.</summary>
    public bool Whole { get; init; }

    /// <summary>The scale of the error.</summary>
    public required ErrorScale Scale { get; init; }

    /// <summary>
    /// Standard error of measurement in the unit, or of the natural logarithm on the logarithmic scale; null where none is known or the scale is ordinal.
    /// </summary>
    public double? StandardError { get; init; }

    /// <summary>The detectable change as published, for instance "MDC95 9.4 deg", with its level; null where none is.</summary>
    public string? PublishedChange { get; init; }

    /// <summary>Where the error comes from.</summary>
    public required Source Source { get; init; }
}
