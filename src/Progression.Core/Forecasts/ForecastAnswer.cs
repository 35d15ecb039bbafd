namespace Progression.Core.Forecasts;

/// <summary>A forecast, or why there is none.</summary>
/// <param name="Forecast">The forecast; null exactly when <paramref name="WhyNot"/> is not.</param>
/// <param name="WhyNot">Why there is none, in a sentence: withheld for a red flag, nothing to start from, too few readings.</param>
public sealed record ForecastAnswer(Forecast? Forecast, string? WhyNot);
