using Progression.Core.Quantities;

namespace Progression.Core.Forecasts;

/// <summary>A point of a forecast in words, rounded to what its error allows.</summary>
public static class ForecastWords
{
    /// <summary>"about 95 deg, 8 in 10 between 85 and 105".</summary>
    public static string Of(Forecast forecast, double week)
    {
        (string middle, string low, string high) = Figures(forecast, week);
        string unit = forecast.Measure.Unit is "1" or "" ? "" : " " + forecast.Measure.Unit;
        return $"about {middle}{unit}, 8 in 10 between {low} and {high}{(forecast.At(week).BeyondPrior ? "; beyond the weeks the forecast is founded on" : "")}";
    }

    /// <summary>The middle and the ends of the 80 % range of the true value, rounded to the forecast's step.</summary>
    public static (string Middle, string Low, string High) Figures(Forecast forecast, double week)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        ForecastPoint point = forecast.At(week);
        return (Rounded(point.Median), Rounded(point.Low80), Rounded(point.High80));

        string Rounded(double value) => Number.Text(forecast.Step * Math.Round(value / forecast.Step, MidpointRounding.AwayFromZero), 1);
    }
}
