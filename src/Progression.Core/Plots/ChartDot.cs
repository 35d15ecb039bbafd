using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.Core.Plots;

/// <summary>A measured value on the chart.</summary>
/// <param name="On">The day.</param>
/// <param name="Week">Weeks since the operation; 1.5 is day 10 or 11.</param>
/// <param name="Value">The value in the measure's unit.</param>
/// <param name="Low">The lower end of its error bar; null when the error is not known.</param>
/// <param name="High">The upper end.</param>
public sealed record ChartDot(DateOnly On, double Week, double Value, double? Low, double? High)
{
    /// <summary>The level of an error bar: the true value lies within for 9 in 10 readings (1.645 standard errors to each side).</summary>
    public const double BarPercent = 90;

    /// <summary>A dot with its bar.</summary>
    /// <param name="on">The day.</param>
    /// <param name="week">Weeks since the operation.</param>
    /// <param name="value">The value.</param>
    /// <param name="error">The standard error on the measure's error scale; null when not known.</param>
    /// <param name="scale">That scale.</param>
    public static ChartDot Of(DateOnly on, double week, double value, double? error, ErrorScale scale)
    {
        if (error is not double known)
        {
            return new(on, week, value, null, null);
        }

        double half = MeasurementError.Z(BarPercent) * known;
        return scale == ErrorScale.Logarithmic
            ? new(on, week, value, value * Math.Exp(-half), value * Math.Exp(half))
            : new(on, week, value, value - half, value + half);
    }
}
