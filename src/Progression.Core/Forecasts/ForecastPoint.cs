namespace Progression.Core.Forecasts;

/// <summary>
/// What is expected of a measure in one week, in its unit and within what may be entered for it. The bands are of the true value, but for those that say
/// "seen", which are of what the instrument will show.
/// </summary>
/// <param name="Week">Weeks since the operation.</param>
/// <param name="Median">As likely above as below.</param>
/// <param name="Low80">Lower end of the band that holds the true value 8 times in 10.</param>
/// <param name="High80">Its upper end.</param>
/// <param name="Low90">Lower end of the band that holds it 9 times in 10.</param>
/// <param name="High90">Its upper end.</param>
/// <param name="SeenLow80">Lower end of the band that holds a reading 8 times in 10.</param>
/// <param name="SeenHigh80">Its upper end.</param>
/// <param name="BeyondPrior">Whether the data behind the starting assumption do not reach so far.</param>
public sealed record ForecastPoint(
    double Week, double Median, double Low80, double High80, double Low90, double High90, double SeenLow80, double SeenHigh80, bool BeyondPrior);
