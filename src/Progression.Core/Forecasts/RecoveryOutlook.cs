using System.Collections.Immutable;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>
/// What a model comes to once the readings are taken in: a Gaussian update for every combination of rates, weighted by prior weight times evidence
/// (best linear unbiased prediction, Laird and Ware 1982, from memory). All values are on the scale of the model.
/// </summary>
public sealed class RecoveryOutlook
{
    private readonly ImmutableArray<RateOutlook> _rates;

    private RecoveryOutlook(ImmutableArray<RateOutlook> rates, ImmutableArray<double> weights) => (_rates, Weights) = (rates, weights);

    /// <summary>The weights of the rates after the readings, in the order of the curve; with two series the second one's rates run faster.</summary>
    public ImmutableArray<double> Weights { get; }

    /// <summary>The rates one by one, in the order of the weights.</summary>
    internal ImmutableArray<RateOutlook> Rates => _rates;

    /// <summary>The outlook of a model.</summary>
    public static RecoveryOutlook Of(ForecastModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        ImmutableArray<SeriesValue> seen =
        [
            .. model.Series.SelectMany((series, index) => series.Seen.Select(one => new SeriesValue(index, one.Week, model.ToScale(one.Value), one.Error))),
        ];
        ImmutableArray<RateOutlook> rates = [.. Choices(model).Select(choice => new RateOutlook(model, choice.Kernels, seen, choice.Weight))];
        double most = rates.Max(rate => rate.LogWeight);
        double sum = rates.Sum(rate => Math.Exp(rate.LogWeight - most));
        return new RecoveryOutlook(rates, [.. rates.Select(rate => Math.Exp(rate.LogWeight - most) / sum)]);
    }

    /// <summary>What is expected of the true value in a week.</summary>
    /// <param name="week">Weeks since the operation.</param>
    public NormalMixture At(double week)
    {
        ImmutableArray<NormalPart>.Builder parts = ImmutableArray.CreateBuilder<NormalPart>(_rates.Length);
        for (int i = 0; i < _rates.Length; i++)
        {
            (double mean, double variance) = _rates[i].At(week);
            parts.Add(new NormalPart(Weights[i], mean, Math.Sqrt(variance)));
        }

        return new NormalMixture(parts.MoveToImmutable());
    }

    /// <summary>Every combination of one rate for each series, with the product of their weights.</summary>
    private static IEnumerable<(ImmutableArray<CurveKernel> Kernels, double Weight)> Choices(ForecastModel model) =>
        model.Series.Aggregate(
            (IEnumerable<(ImmutableArray<CurveKernel> Kernels, double Weight)>)[([], 1)],
            (choices, series) => [.. from choice in choices
                                     from rate in series.Curve.Rates
                                     select (choice.Kernels.Add(new CurveKernel(series.Curve, rate.Weeks, model.ToScale)), choice.Weight * rate.Weight)]);
}
