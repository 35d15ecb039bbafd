using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>The weeks of a forecast and what is expected in them.</summary>
internal static class ForecastGrid
{
    private const double Step = 0.5;

    /// <summary>The weeks from half a week to the horizon.</summary>
    internal static IEnumerable<double> Weeks => Enumerable.Range(1, Forecast.GridWeeks).Select(step => step * Step);

    internal static ImmutableArray<ForecastPoint> Points(RecoveryOutlook outlook, ForecastStart start, Measure measure) =>
        [.. Weeks.Select(week => Point(week, new(() => outlook.At(week)), start, measure))];

    private static ForecastPoint Point(double week, Lazy<NormalMixture> expected, ForecastStart start, Measure measure) => new(week, (share, isSeen) =>
    {
        NormalMixture mixture = isSeen ? expected.Value.WithError(start.Model.Error) : expected.Value;
        return Math.Clamp(start.Model.FromScale(mixture.Quantile(share)), isSeen ? measure.Least : Least(measure), measure.Most);
    })
    {
        BeyondPrior = week > start.HorizonWeek,
    };

    /// <summary>The least true value there can be. A reading of the lag may fall under zero by its error; the lag itself cannot, because no leg straightens further by itself than it can be straightened.</summary>
    internal static double Least(Measure measure) => measure.Id == MeasureIds.Lag ? 0 : measure.Least;
}
