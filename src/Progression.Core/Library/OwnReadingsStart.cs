using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>How a forecast starts where nothing is published: vaguely, around the person's own readings. Spreads count in standard errors of the measure.</summary>
public sealed record OwnReadingsStart
{
    /// <summary>The id of its entry in the library.</summary>
    public const string Id = "own-readings";

    /// <summary>What it is, in words.</summary>
    public required string Title { get; init; }

    /// <summary>The fewest readings of one person that allow a forecast.</summary>
    public required int LeastReadings { get; init; }

    /// <summary>The early week.</summary>
    public required double EarlyWeek { get; init; }

    /// <summary>The late week.</summary>
    public required double LateWeek { get; init; }

    /// <summary>Spread of the level at both weeks, in standard errors.</summary>
    public required double Spread { get; init; }

    /// <summary>Correlation of the two levels.</summary>
    public required double Correlation { get; init; }

    /// <summary>How fast it may go.</summary>
    public required ImmutableArray<RecoveryRate> Rates { get; init; }

    /// <summary>How far a course departs from the curve, in standard errors.</summary>
    public required double Misfit { get; init; }

    /// <summary>How long a departure lasts.</summary>
    public required double MisfitWeeks { get; init; }

    /// <summary>Weeks after the last reading up to which the forecast is more than a guess.</summary>
    public required double HorizonWeeks { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required Source Source { get; init; }

    /// <summary>The curve for one person.</summary>
    /// <param name="level">Around which level, in the measure's unit.</param>
    /// <param name="error">The standard error of the measure, on the scale of its error.</param>
    public RecoveryCurve Around(double level, double error) => new(
        new RecoveryAnchor(EarlyWeek, level, Spread * error), new RecoveryAnchor(LateWeek, level, Spread * error), Correlation, Rates, Misfit * error, MisfitWeeks);
}
