using System.Text.Json;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Forecasts;

/// <summary>
/// Against an independent program: oracle/oracle.py conditions one dense Gaussian with numpy and finds quantiles with scipy. Its output, with the versions,
/// is oracle/oracle.json: 240 random models, one series or two, linear and logarithmic, none to twelve readings.
/// </summary>
public sealed class RecoveryOutlookOracleTests
{
    private const double Relative = 1e-9;
    private static readonly double[] Shares = [0.05, 0.1, 0.5, 0.9, 0.95];

    [Fact]
    public void Every_case_agrees_to_nine_digits()
    {
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "oracle.json")));
        JsonElement[] cases = [.. file.RootElement.GetProperty("cases").EnumerateArray()];

        Assert.True(cases.Length >= 200);
        Assert.All(cases, Agrees);
    }

    private static void Agrees(JsonElement one)
    {
        ForecastModel model = Model(one);
        RecoveryOutlook outlook = RecoveryOutlook.Of(model);
        JsonElement expected = one.GetProperty("expected");
        double target = model.ToScale(Number(one, "target"));

        Near(Number(expected, "error"), model.Error, model.Error);
        Assert.All(Numbers(expected, "weights").Zip(outlook.Weights), pair => Near(pair.First, pair.Second, 1));
        foreach (JsonElement week in expected.GetProperty("weeks").EnumerateArray())
        {
            NormalMixture at = outlook.At(Number(week, "week"));
            NormalMixture seen = at.WithError(model.Error);
            double size = Math.Max(Math.Abs(Number(week, "mean")), Number(week, "sd"));
            Near(Number(week, "mean"), at.Mean, size);
            Near(Number(week, "sd"), at.StandardDeviation, size);
            Assert.All(Numbers(week, "quantiles").Zip(Shares), pair => Near(pair.First, at.Quantile(pair.Second), size));
            Assert.All(Numbers(week, "seen").Zip([0.1, 0.9]), pair => Near(pair.First, seen.Quantile(pair.Second), size));
            Near(Number(week, "at_least"), at.AtLeast(target), 1);
            Near(Number(week, "shown_at_least"), seen.AtLeast(target), 1);
        }
    }

    private static void Near(double expected, double found, double size) => Assert.InRange(Math.Abs(expected - found), 0, Relative * size);

    private static ForecastModel Model(JsonElement json) => new(
        json.GetProperty("scale").GetString() == "linear" ? ErrorScale.Linear : ErrorScale.Logarithmic,
        [
            .. json.GetProperty("series").EnumerateArray().Select(series => new ForecastSeries(
                "any", Number(series, "sign"), Curve(series.GetProperty("curve")), Number(series, "error"),
                [.. series.GetProperty("readings").EnumerateArray().Select(seen => new SeenValue(Number(seen, "week"), Number(seen, "value"), Number(seen, "error")))])),
        ],
        Number(json, "error_correlation"));

    private static RecoveryCurve Curve(JsonElement json) => new(
        Anchor(json.GetProperty("early")), Anchor(json.GetProperty("late")), Number(json, "correlation"),
        [.. json.GetProperty("rates").EnumerateArray().Select(rate => new RecoveryRate(Number(rate, "weeks"), Number(rate, "weight")))],
        Number(json, "misfit_sd"), Number(json, "misfit_weeks"));

    private static RecoveryAnchor Anchor(JsonElement json) => new(Number(json, "week"), Number(json, "value"), Number(json, "sd"));

    private static double Number(JsonElement json, string name) => json.GetProperty(name).GetDouble();

    private static IEnumerable<double> Numbers(JsonElement json, string name) => json.GetProperty(name).EnumerateArray().Select(one => one.GetDouble());
}
