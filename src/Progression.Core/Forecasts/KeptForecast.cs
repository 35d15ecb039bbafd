using Progression.Core.Library;

namespace Progression.Core.Forecasts;

/// <summary>A forecast as it is kept until the next reading scores it: the starting curve as it was and the readings it rested on, so that scoring is exact.</summary>
public sealed record KeptForecast
{
    /// <summary>The day of the assessment it was made at.</summary>
    public required DateOnly MadeOn { get; init; }

    /// <summary>The id of the measure.</summary>
    public required string Measure { get; init; }

    /// <summary>Where the starting assumption came from.</summary>
    public required ForecastBasis Basis { get; init; }

    /// <summary>The version of the library it came from.</summary>
    public required string LibraryVersion { get; init; }

    /// <summary>What it was computed from.</summary>
    public required ForecastModel Model { get; init; }

    /// <summary>The next milestone that was ahead; null when there was none.</summary>
    public KeptTarget? Target { get; init; }

    /// <summary>How it came out; null while no reading has followed.</summary>
    public ForecastScore? Score { get; init; }
}

/// <summary>The milestone a kept forecast had in view.</summary>
/// <param name="Milestone">Its id.</param>
/// <param name="Week">The week it is due in.</param>
/// <param name="Value">Its target in the measure's unit.</param>
/// <param name="Better">Which way the measure improves.</param>
public sealed record KeptTarget(string Milestone, double Week, double Value, Direction Better);

/// <summary>How a kept forecast came out.</summary>
/// <param name="On">The day of the reading.</param>
/// <param name="Value">The reading, in the unit.</param>
/// <param name="Low80">Lower end of the band in which the forecast had the reading of that day 8 times in 10.</param>
/// <param name="High80">Its upper end.</param>
/// <param name="Inside">Whether the reading lies in it, ends included.</param>
/// <param name="Z">Distance from what was expected, in standard deviations of a reading.</param>
/// <param name="Brier">Square of the chance given to a reading that meets the milestone in view, minus 1 if this one does, or 0; null without a milestone.</param>
public sealed record ForecastScore(DateOnly On, double Value, double Low80, double High80, bool Inside, double Z, double? Brier);
