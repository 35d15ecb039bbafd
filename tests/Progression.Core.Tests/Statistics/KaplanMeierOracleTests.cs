using System.Text.Json;
using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

/// <summary>
/// Against an independent program: oracle/survival.R has R's package survival make the curves. Its output, with the versions, is oracle/survival.json: the
/// textbooks' example, the ends (all censored, none censored, one person, a half exactly) and 40 random groups with ties, at 95 and 80 %.
/// </summary>
public sealed class KaplanMeierOracleTests
{
    [Fact]
    public void Every_curve_interval_and_median_agrees()
    {
        using JsonDocument file = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "survival.json")));
        JsonElement[] cases = [.. file.RootElement.GetProperty("cases").EnumerateArray()];

        Assert.True(cases.Length >= 90);
        Assert.Empty(cases.Where(one => !Agrees(one)).Select(one => $"{one.GetProperty("name")} at {one.GetProperty("level")}"));
    }

    private static bool Agrees(JsonElement one)
    {
        KaplanMeier curve = KaplanMeier.Of(
            Numbers(one, "of").Zip(Numbers(one, "happened"), (time, happened) => new Followed(time!.Value, happened == 1)), one.GetProperty("level").GetDouble());
        return Same(Numbers(one, "time"), curve.Steps.Select(step => (double?)step.Time))
            && Same(Numbers(one, "at_risk"), curve.Steps.Select(step => (double?)step.AtRisk))
            && Same(Numbers(one, "events"), curve.Steps.Select(step => (double?)step.Events))
            && Same(Numbers(one, "censored"), curve.Steps.Select(step => (double?)step.Censored))
            && Same(Numbers(one, "waiting"), curve.Steps.Select(step => (double?)step.Waiting))
            && Same(Numbers(one, "low"), curve.Steps.Select(step => step.Low))
            && Same(Numbers(one, "high"), curve.Steps.Select(step => step.High))
            && Same(Numbers(one, "median"), [curve.Median, curve.MedianLow, curve.MedianHigh]);
    }

    private static bool Same(double?[] expected, IEnumerable<double?> found) =>
        expected.Length == found.Count() && expected.Zip(found).All(pair => pair is (null, null) || Math.Abs((pair.First - pair.Second) ?? double.NaN) < 1e-9);

    private static double?[] Numbers(JsonElement json, string name) =>
        [.. json.GetProperty(name).EnumerateArray().Select(value => value.ValueKind == JsonValueKind.Null ? (double?)null : value.GetDouble())];
}
