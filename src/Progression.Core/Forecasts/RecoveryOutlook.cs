using System.Collections.Immutable;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>
/// What a model comes to once the readings are taken in: a Gaussian update for every combination of rates, weighted by prior weight times evidence
/// (best linear unbiased prediction, Laird and Ware 1982, from memory). All values are on the scale of the model.
/// </summary>
public sealed class RecoveryOutlook
{
    // Series whose errors are independent are updated each by itself; a combination of rates then adds them up.
    private readonly ImmutableArray<ImmutableArray<RateOutlook>> _parts;
    private readonly ImmutableArray<ImmutableArray<int>> _choices;

    private RecoveryOutlook(ImmutableArray<ImmutableArray<RateOutlook>> parts)
    {
        _parts = parts;
        _choices = [.. Choices([.. parts.Select(part => part.Length)])];
        double[] logs = [.. _choices.Select(choice => choice.Select((rate, part) => parts[part][rate].LogWeight).Sum())];
        double most = logs.Max();
        double sum = logs.Sum(log => Math.Exp(log - most));
        Weights = [.. logs.Select(log => Math.Exp(log - most) / sum)];
    }

    /// <summary>The weights of the rates after the readings, in the order of the curve; with two series the second one's rates run faster.</summary>
    public ImmutableArray<double> Weights { get; }

    /// <summary>The outlook of a model.</summary>
    public static RecoveryOutlook Of(ForecastModel model)
    {
        ArgumentNullException.ThrowIfNull(model);
        IEnumerable<ForecastModel> parts = model.ErrorCorrelation == 0 ? model.Series.Select(series => model with { Series = [series] }) : [model];
        return new RecoveryOutlook([.. parts.Select(Rates)]);
    }

    /// <summary>What is expected of the true value in a week.</summary>
    /// <param name="week">Weeks since the operation.</param>
    public NormalMixture At(double week)
    {
        (double Mean, double Variance)[][] parts = [.. _parts.Select(part => part.Select(rate => rate.At(week)).ToArray())];
        return new NormalMixture([.. _choices.Select((choice, i) =>
        {
            (double mean, double variance) = (0, 0);
            for (int part = 0; part < parts.Length; part++)
            {
                (mean, variance) = (mean + parts[part][choice[part]].Mean, variance + parts[part][choice[part]].Variance);
            }

            return new NormalPart(Weights[i], mean, Math.Sqrt(variance));
        })]);
    }

    /// <summary>For the combination of rates at a place in <see cref="Weights"/>: means, and the lower triangular factor of the covariance, of the true values in several weeks.</summary>
    internal Func<int, (double[] Means, double[] Factor)> Joint(double[] weeks)
    {
        Lazy<(double[] Means, double[] Covariance)>[][] parts = [.. _parts.Select(part => part.Select(rate => new Lazy<(double[], double[])>(() => rate.Joint(weeks))).ToArray())];
        return i =>
        {
            (double[] means, double[] matrix) = (new double[weeks.Length], new double[weeks.Length * weeks.Length]);
            foreach ((int part, int rate) in _choices[i].Index())
            {
                (double[] own, double[] covariance) = parts[part][rate].Value;
                Add(means, own);
                Add(matrix, covariance);
            }

            Triangle.Factor(matrix, weeks.Length);
            return (means, matrix);
        };
    }

    private static void Add(double[] sum, double[] more)
    {
        for (int i = 0; i < sum.Length; i++)
        {
            sum[i] += more[i];
        }
    }

    private static ImmutableArray<RateOutlook> Rates(ForecastModel part)
    {
        ImmutableArray<SeriesValue> seen =
        [
            .. part.Series.SelectMany((series, index) => series.Seen.Select(one => new SeriesValue(index, one.Week, part.ToScale(one.Value), one.Error))),
        ];
        ImmutableArray<ImmutableArray<CurveKernel>> kernels =
            [.. part.Series.Select(series => series.Curve.Rates.Select(rate => new CurveKernel(series.Curve, rate.Weeks, part.ToScale)).ToImmutableArray())];
        return
        [
            .. Choices([.. kernels.Select(each => each.Length)]).Select(choice => new RateOutlook(
                part,
                [.. choice.Select((rate, series) => kernels[series][rate])],
                seen,
                choice.Select((rate, series) => part.Series[series].Curve.Rates[rate].Weight).Aggregate((product, weight) => product * weight))),
        ];
    }

    /// <summary>Every combination of one of each, the last one's places running fastest.</summary>
    private static IEnumerable<ImmutableArray<int>> Choices(IEnumerable<int> counts) => counts.Aggregate(
        (IEnumerable<ImmutableArray<int>>)[[]],
        (choices, count) => [.. from choice in choices from place in Enumerable.Range(0, count) select choice.Add(place)]);
}
