using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Forecasts;

/// <summary>How often readings fell into the 80 % band of the forecast before them, over a whole clinic.</summary>
/// <param name="Scored">Forecasts scored.</param>
/// <param name="Hits">Those whose reading lay inside the band; 0 to <paramref name="Scored"/>.</param>
public sealed record HitRate(int Scored, int Hits)
{
    /// <summary>The share under which the clinic is warned, in percent; null while too few are scored to say anything.</summary>
    public double? WarnsUnder { get; private init; }

    /// <summary>Whether the bands hit too seldom.</summary>
    public bool Warns => WarnsUnder is double least && 100.0 * Hits < least * Scored;

    /// <summary>The rate in words; null while too few are scored to say anything.</summary>
    public string? Words => WarnsUnder is not double least ? null
        : $"{Hits} of {Scored} readings ({Number.Text(100.0 * Hits / Scored, 0)} %) fell into the 80 % band of the forecast before them."
            + (Warns ? $" That is under {Number.Text(least)} %: the forecasts do not fit this clinic; look at measuring, and at the priors." : "");

    /// <summary>The rate over kept forecasts of any number of cases; those that wait for a reading do not count.</summary>
    public static HitRate Of(IEnumerable<KeptForecast> kept, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(library);
        ForecastScore[] scores = [.. kept.Select(one => one.Score).OfType<ForecastScore>()];
        return Of(scores.Length, scores.Count(score => score.Inside), library);
    }

    /// <summary>The rate over forecasts that were counted elsewhere.</summary>
    /// <param name="scored">Forecasts scored.</param>
    /// <param name="hits">Those whose reading lay inside the band.</param>
    /// <param name="library">Says from how many on the rate is told, and under what it warns.</param>
    public static HitRate Of(int scored, int hits, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        bool enough = scored >= library.Limit(LimitIds.ForecastsScored).Value;
        return new HitRate(scored, hits) { WarnsUnder = enough ? library.Limit(LimitIds.ForecastHitRate).Value : null };
    }
}
