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

    /// <summary>The error to take when rater, device or position changed between two readings; null where no figure is published.</summary>
    public ChangedError? Changed { get; init; }

    /// <summary>Whether <see cref="StandardError"/> is of a single trial, so that the mean of k trials has 1/sqrt(k) of it. An error between visits has not.</summary>
    public bool ErrorOfOneTrial { get; init; }

    /// <summary>
    /// The least difference that is taken for real, in the unit: on a scale of steps the only yardstick, on others a floor under the detectable change;
    /// null for none.
    /// </summary>
    public double? RealStep { get; init; }

    /// <summary>On a scale of steps, the smaller difference that counts once the next visit shows it again; null for none.</summary>
    public double? ConfirmedStep { get; init; }

    /// <summary>Whether two readings can only be compared on the same number of stairs.</summary>
    public bool SameStairs { get; init; }

    /// <summary>The gain that matters to people; null where no figure is published.</summary>
    public ImportantChange? ImportantGain { get; init; }

    /// <summary>The loss that matters to people; null where no figure of its own is published.</summary>
    public ImportantChange? ImportantLoss { get; init; }

    /// <summary>What a reader of the values should know, such as a bias; null for nothing.</summary>
    public string? Note { get; init; }

    /// <summary>Its place in the library, from 0: the order in which measures are told.</summary>
    public int Place { get; init; }

    /// <summary>Where the error comes from.</summary>
    public required Source Source { get; init; }
}

/// <summary>A standard error that holds when something about the measuring changed.</summary>
/// <param name="StandardError">Standard error of one reading on the measure's scale.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record ChangedError(double StandardError, Source Source);

/// <summary>How large a change has to be to matter.</summary>
/// <param name="Amount">The change in the measure's unit, over zero.</param>
/// <param name="Population">Whom it was found in.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record ImportantChange(double Amount, string Population, Source Source);
