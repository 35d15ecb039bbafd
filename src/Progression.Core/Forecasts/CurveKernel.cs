using Progression.Core.Library;

namespace Progression.Core.Forecasts;

/// <summary>
/// A recovery curve at one rate as a Gaussian process: f(t) = (1 - h) a + h b + d, where a and b are the levels at the two anchor weeks,
/// h(t) = (g(t1) - g(t)) / (g(t1) - g(t2)) with g(t) = exp(-t / rate), and d is an Ornstein-Uhlenbeck misfit. Values are on the scale of the model.
/// </summary>
internal sealed class CurveKernel
{
    private readonly double _weeks, _atEarly, _span, _early, _late, _earlyVariance, _lateVariance, _covariance, _misfitVariance, _misfitWeeks;

    internal CurveKernel(RecoveryCurve curve, double weeks, Func<double, double> toScale)
    {
        (RecoveryAnchor early, RecoveryAnchor late) = (curve.Early, curve.Late);
        (_weeks, _early, _late) = (weeks, toScale(early.Level), toScale(late.Level));
        _atEarly = Math.Exp(-early.Week / weeks);
        _span = _atEarly - Math.Exp(-late.Week / weeks);
        (_earlyVariance, _lateVariance) = (early.Spread * early.Spread, late.Spread * late.Spread);
        _covariance = curve.Correlation * early.Spread * late.Spread;
        (_misfitVariance, _misfitWeeks) = (curve.MisfitSpread * curve.MisfitSpread, curve.MisfitWeeks);
    }

    /// <summary>How far on the way from the early to the late level a week is: 0 and 1 at the two, less before, more after.</summary>
    internal double Share(double week) => (_atEarly - Math.Exp(-week / _weeks)) / _span;

    /// <summary>The mean before any reading.</summary>
    internal double Mean(double share) => ((1 - share) * _early) + (share * _late);

    /// <summary>The covariance before any reading.</summary>
    /// <param name="first">Share of the way at the one week.</param>
    /// <param name="second">Share of the way at the other.</param>
    /// <param name="fading">What is left of a misfit between them, see <see cref="Fading"/>.</param>
    internal double Covariance(double first, double second, double fading) =>
        ((1 - first) * (((1 - second) * _earlyVariance) + (second * _covariance)))
        + (first * (((1 - second) * _covariance) + (second * _lateVariance)))
        + (_misfitVariance * fading);

    /// <summary>What is left of a misfit from one week to another: 1 for the same week, falling to 0.</summary>
    internal double Fading(double first, double second) => Math.Exp(-Math.Abs(first - second) / _misfitWeeks);
}
