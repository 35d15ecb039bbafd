using System.Collections.Immutable;

namespace Progression.Core.People;

/// <summary>One measured value. A measure that was not taken has no reading; there is no reading of "zero for missing".</summary>
/// <param name="Measure">The id of the measure in the library, which also gives the unit.</param>
/// <param name="Value">The value in the measure's unit; the mean when several trials were taken.</param>
public sealed record Reading(string Measure, double Value)
{
    /// <summary>Most trials behind one value: more than anybody asks of a knee; catches slips. Common practice, no source.</summary>
    public const int MostTrials = 20;

    /// <summary>Most steps of a staircase; catches slips. Common practice, no source.</summary>
    public const int MostSteps = 60;

    private const int Decimals = 6;

    /// <summary>Number of trials behind the value; null when not stated.</summary>
    public int? Trials { get; init; }

    /// <summary>The trials one by one, in the order in which they were done; empty when only their mean was given.</summary>
    public ImmutableArray<double> Each { get; init; } = [];

    /// <summary>Who measured, where it was not the rater of the assessment; null otherwise.</summary>
    public string? Rater { get; init; }

    /// <summary>The device; null when not stated.</summary>
    public string? Device { get; init; }

    /// <summary>Position of the person; null when not stated.</summary>
    public string? Position { get; init; }

    /// <summary>For stairs: the number of steps of the staircase; null when not stated.</summary>
    public int? Steps { get; init; }

    /// <summary>The values that stood here before and were wrong, oldest first; empty when nothing was corrected.</summary>
    public ImmutableArray<Correction> Corrected { get; init; } = [];

    /// <summary>A reading of several trials: its value is their mean.</summary>
    /// <param name="measure">The id of the measure.</param>
    /// <param name="each">The trials, at least one.</param>
    /// <exception cref="ArgumentException">There is no trial.</exception>
    public static Reading OfTrials(string measure, ImmutableArray<double> each) => each.IsDefaultOrEmpty
        ? throw new ArgumentException("A reading has at least one trial.", nameof(each))
        : new Reading(measure, Math.Round(each.Average(), Decimals)) { Trials = each.Length, Each = each };
}

/// <summary>A value that was wrong and has been put right. It is kept, so that nobody has to ask what stood there.</summary>
/// <param name="Was">The wrong value, in the measure's unit.</param>
/// <param name="On">The day it was put right.</param>
/// <param name="By">Who put it right: a role or initials.</param>
/// <param name="Why">Why; null when no reason was given.</param>
public sealed record Correction(double Was, DateOnly On, string By, string? Why);
