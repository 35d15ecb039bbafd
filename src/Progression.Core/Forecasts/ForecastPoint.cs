namespace Progression.Core.Forecasts;

/// <summary>
/// What is expected of a measure in one week, in its unit and within what may be entered for it. The bands are of the true value, but for those that say
/// "seen", which are of what the instrument will show. Each figure is reckoned when it is first asked for: a grid shows one or two of them.
/// </summary>
public sealed class ForecastPoint
{
    private readonly Lazy<double> _median;
    private readonly Lazy<(double Low, double High)> _band80, _band90, _seen80;

    /// <summary>A point.</summary>
    /// <param name="week">Weeks since the operation.</param>
    /// <param name="quantile">The value under which a share lies: of what the instrument will show where the second is true, else of the true value.</param>
    public ForecastPoint(double week, Func<double, bool, double> quantile)
    {
        Week = week;
        _median = new(() => quantile(0.5, false));
        _band80 = new(() => (quantile(0.1, false), quantile(0.9, false)));
        _band90 = new(() => (quantile(0.05, false), quantile(0.95, false)));
        _seen80 = new(() => (quantile(0.1, true), quantile(0.9, true)));
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
    public bool BeyondPrior { get; init; }
}
