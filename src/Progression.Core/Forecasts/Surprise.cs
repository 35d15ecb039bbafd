namespace Progression.Core.Forecasts;

/// <summary>How a reading fell against the forecast made without it.</summary>
/// <param name="Z">Distance from what was expected in standard deviations of what the instrument would show; positive for more.</param>
/// <param name="IsOff">Whether it is so far off that it should be measured again.</param>
/// <param name="Words">What to make of it.</param>
public sealed record Surprise(double Z, bool IsOff, string Words)
{
    internal static Surprise Of(double z, double limit) => new(z, Math.Abs(z) > limit, Math.Abs(z) > limit
        ? "off the chart: re-measure, check rater and position, look at the red flags"
        : "within what was expected");
}
