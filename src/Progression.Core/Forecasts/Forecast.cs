using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Forecasts;

/// <summary>
/// A forecast of one measure from what was known on a day: what usually follows under usual care, given the person's readings. It is not the effect of a
/// stim dose, and it never moves a phase; a clinician decides.
/// </summary>
public sealed record Forecast
{
    /// <summary>Steps of the grid: half weeks up to the longest plan.</summary>
    internal const int GridWeeks = 2 * PostOpWeek.Longest;

    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>The day of the latest assessment used; the day asked for when none was.</summary>
    public required DateOnly AsOf { get; init; }

    /// <summary>Where the starting assumption comes from.</summary>
    public required ForecastBasis Basis { get; init; }

    /// <summary>What it rests on, in words: the starting assumption with its standing, the readings and their error.</summary>
    public required string BasisWords { get; init; }

    /// <summary>Visits with a reading of the measure.</summary>
    public required int Readings { get; init; }

    /// <summary>Standard error of measurement reckoned with, on the scale of the measure's error.</summary>
    public required double ErrorUsed { get; init; }

    /// <summary>What is expected, on a grid of half weeks from 0.5 to 26.</summary>
    public required ImmutableArray<ForecastPoint> Points { get; init; }

    /// <summary>The person's readings, in the unit.</summary>
    public required ImmutableArray<(double Week, double Value)> Measured { get; init; }

    /// <summary>The milestones of the measure that lie ahead or are past due and not met by the last reading.</summary>
    public required ImmutableArray<MilestoneOutlook> Milestones
    {
        get => MilestonesLater is { } later ? later.Value : field;
        init;
    }

    /// <summary>The newest reading against the forecast without it; null when there is none, or no forecast without it.</summary>
    public Surprise? Surprise
    {
        get => SurpriseLater is { } later ? later.Value : field;
        init;
    }

    /// <summary>Where the starting assumption comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>The milestones, reckoned when they are first asked for: drawing courses is the dearest part of a forecast, and a grid shows only its points.</summary>
    internal Lazy<ImmutableArray<MilestoneOutlook>>? MilestonesLater { get; init; }

    /// <summary>The surprise, for the same reason: it takes a second fit.</summary>
    internal Lazy<Surprise?>? SurpriseLater { get; init; }

    /// <summary>The point of the grid nearest to a week.</summary>
    public ForecastPoint At(double week) => Points.MinBy(point => Math.Abs(point.Week - week))!;
}
