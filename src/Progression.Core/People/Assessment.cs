using System.Collections.Immutable;

namespace Progression.Core.People;

/// <summary>What was measured and seen at one visit.</summary>
/// <param name="Date">The day of the visit.</param>
/// <param name="Readings">The readings by measure id; a measure that is missing was not taken.</param>
/// <param name="SignsSeen">The answers by sign id; a sign that is missing was not asked.</param>
public sealed record Assessment(
    DateOnly Date,
    ImmutableSortedDictionary<string, Reading> Readings,
    ImmutableSortedDictionary<string, Answer> SignsSeen)
{
    /// <summary>Who measured: a role or initials; null when not stated.</summary>
    public string? Rater { get; init; }

    /// <summary>What was put right about the visit as a whole, oldest first; a wrong value that has a right one is kept with its reading instead.</summary>
    public ImmutableArray<VisitCorrection> Corrected { get; init; } = [];

    /// <summary>The value of a measure as entered; null when it was not taken.</summary>
    public double? Value(string measure) => Readings.TryGetValue(measure, out Reading? reading) ? reading.Value : null;

    /// <summary>True for yes, false for no, null when not asked or not known.</summary>
    public bool? Sign(string sign) => SignsSeen.TryGetValue(sign, out Answer answer) && answer != Answer.Unknown ? answer == Answer.Yes : null;
}
