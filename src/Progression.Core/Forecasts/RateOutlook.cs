using System.Collections.Immutable;

namespace Progression.Core.Forecasts;

/// <summary>A reading on the scale of the model, with the place of its series.</summary>
internal sealed record SeriesValue(int Series, double Week, double Value, double Error);

/// <summary>The outlook for one rate of each series of a model whose errors go together. With V the covariance of the readings, r what they differ from the mean before, and L L' = V.</summary>
internal sealed class RateOutlook
{
    /// <summary>A variance is kept this far from zero, as a share of what it was before the readings.</summary>
    private const double LeastShare = 1e-12;

    private readonly ForecastModel _model;
    private readonly ImmutableArray<CurveKernel> _kernels;
    private readonly ImmutableArray<SeriesValue> _seen;
    private readonly double[] _shares;
    private readonly double[] _factor;
    private readonly double[] _residual;

    internal RateOutlook(ForecastModel model, ImmutableArray<CurveKernel> kernels, ImmutableArray<SeriesValue> seen, double weight)
    {
        (_model, _kernels, _seen) = (model, kernels, seen);
        int size = seen.Length;
        _shares = [.. seen.Select(one => kernels[one.Series].Share(one.Week))];
        _residual = [.. seen.Select((one, i) => one.Value - kernels[one.Series].Mean(_shares[i]))];
        _factor = new double[size * size];
        for (int i = 0; i < size; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                _factor[(i * size) + j] = Covariance(i, j) + ErrorCovariance(seen[i], seen[j], i == j);
            }
        }

        Triangle.Factor(_factor, size);
        Triangle.Solve(_factor, _residual);
        double logDeterminantHalf = Enumerable.Range(0, size).Sum(i => Math.Log(_factor[(i * size) + i]));
        LogWeight = Math.Log(weight) - (Triangle.Dot(_residual, _residual) / 2) - logDeterminantHalf;
    }

    /// <summary>Logarithm of prior weight times evidence, up to a term that is the same for all rates.</summary>
    internal double LogWeight { get; }

    /// <summary>Mean and variance of the true value in a week.</summary>
    internal (double Mean, double Variance) At(double week)
    {
        Span<double> with = stackalloc double[_seen.Length];
        (double mean, double variance) = Before(week, with);
        return (mean + Triangle.Dot(with, _residual), Math.Max(variance - Triangle.Dot(with, with), LeastShare * variance));
    }

    /// <summary>Means, and the lower triangle of the covariance, of the true values in several weeks.</summary>
    internal (double[] Means, double[] Covariance) Joint(ReadOnlySpan<double> weeks)
    {
        (int count, int size) = (weeks.Length, _seen.Length);
        (double[] means, double[] matrix, double[] with) = (new double[count], new double[count * count], new double[count * size]);
        double[][] shares = [.. _kernels.Select(_ => new double[count])];
        for (int i = 0; i < count; i++)
        {
            Span<double> own = with.AsSpan(i * size, size);
            (means[i], double variance) = Before(weeks[i], own);
            means[i] += Triangle.Dot(own, _residual);
            for (int s = 0; s < _kernels.Length; s++)
            {
                shares[s][i] = _kernels[s].Share(weeks[i]);
            }

            for (int j = 0; j <= i; j++)
            {
                double covariance = -Triangle.Dot(own, with.AsSpan(j * size, size));
                for (int s = 0; s < _kernels.Length; s++)
                {
                    covariance += Square(s) * _kernels[s].Covariance(shares[s][i], shares[s][j], _kernels[s].Fading(weeks[i], weeks[j]));
                }

                matrix[(i * count) + j] = covariance;
            }

            // A curve without misfit has only two freedoms, and its covariance no factor without this.
            matrix[(i * count) + i] += 1e-9 * variance;
        }

        return (means, matrix);
    }

    /// <summary>Mean and variance before the readings, and L to the minus one times the covariance with the readings.</summary>
    private (double Mean, double Variance) Before(double week, Span<double> with)
    {
        (double mean, double variance) = (0, 0);
        for (int s = 0; s < _kernels.Length; s++)
        {
            double share = _kernels[s].Share(week);
            mean += _model.Series[s].Sign * _kernels[s].Mean(share);
            variance += Square(s) * _kernels[s].Covariance(share, share, 1);
            for (int j = 0; j < _seen.Length; j++)
            {
                if (_seen[j].Series == s)
                {
                    with[j] = _model.Series[s].Sign * _kernels[s].Covariance(share, _shares[j], _kernels[s].Fading(week, _seen[j].Week));
                }
            }
        }

        Triangle.Solve(_factor, with);
        return (mean, variance);
    }

    private double Covariance(int i, int j) => _seen[i].Series != _seen[j].Series
        ? 0
        : _kernels[_seen[i].Series].Covariance(_shares[i], _shares[j], _kernels[_seen[i].Series].Fading(_seen[i].Week, _seen[j].Week));

    private double ErrorCovariance(SeriesValue one, SeriesValue other, bool same) =>
        same ? one.Error * one.Error
        : one.Series != other.Series && one.Week == other.Week ? _model.ErrorCorrelation * one.Error * other.Error
        : 0;

    private double Square(int series) => _model.Series[series].Sign * _model.Series[series].Sign;
}
