namespace Progression.Core.Forecasts;

/// <summary>Where the starting assumption of a forecast comes from.</summary>
public enum ForecastBasis
{
    /// <summary>Published figures of a population.</summary>
    Population,

    /// <summary>The clinic's own figures.</summary>
    Clinic,

    /// <summary>The person's own readings; nothing is published.</summary>
    OwnReadings,
}
