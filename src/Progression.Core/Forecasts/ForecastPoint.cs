using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>
/// What is expected of a measure in one week, in its unit and within what may be entered for it. The bands are of the true value, but for those that say
/// "seen", which are of what the instrument will show. Each figure is reckoned when it is first asked for.
/// </summary>
public sealed class ForecastPoint
{
    private readonly Lazy<NormalMixture> _expected;
    private readonly Lazy<double> _median;
    private readonly Lazy<(double Low, double High)> _band80, _band90, _seen80;

    /// <summary>A point.</summary>
    /// <param name="week">Weeks since the operation.</param>
    /// <param name="expected">What is expected then, on the scale of the model.</param>
    /// <param name="error">Standard error of the instrument on that scale.</param>
    /// <param name="inUnit">A value of that scale in the unit: within what a reading can be where the second is true, else within what can be true.</param>
    internal ForecastPoint(double week, Func<NormalMixture> expected, double error, Func<double, bool, double> inUnit)
    {
        Week = week;
        _expected = new(expected);
        _median = new(() => inUnit(_expected.Value.Quantile(0.5), false));
        _band80 = new(() => Band(_expected.Value, 0.1, seen: false));
        _band90 = new(() => Band(_expected.Value, 0.05, seen: false));
        _seen80 = new(() => Band(_expected.Value.WithError(error), 0.1, seen: true));

        (double, double) Band(NormalMixture mixture, double tail, bool seen) => (inUnit(mixture.Quantile(tail), seen), inUnit(mixture.Quantile(1 - tail), seen));
    }

    /// <summary>Weeks since the operation.</summary>
    public double Week { get; }

    /// <summary>As likely above as below.</summary>
    public double Median => _median.Value;

    /// <summary>Lower end of the band that holds the true value 8 times in 10.</summary>
    public double Low80 => _band80.Value.Low;

    /// <summary>Its upper end.</summary>
    public double High80 => _band80.Value.High;

    /// <summary>Lower end of the band that holds it 9 times in 10.</summary>
    public double Low90 => _band90.Value.Low;

    /// <summary>Its upper end.</summary>
    public double High90 => _band90.Value.High;

    /// <summary>Lower end of the band that holds a reading 8 times in 10.</summary>
    public double SeenLow80 => _seen80.Value.Low;

    /// <summary>Its upper end.</summary>
    public double SeenHigh80 => _seen80.Value.High;

    /// <summary>Whether the data behind the starting assumption do not reach so far.</summary>
    public required bool BeyondPrior { get; init; }
}
