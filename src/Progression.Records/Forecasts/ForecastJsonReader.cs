using System.Collections.Immutable;
using System.Text.Json;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using static Progression.Records.Json.JsonReading;

namespace Progression.Records.Forecasts;

/// <summary>Reads what <see cref="ForecastJson"/> writes. A text from which no forecast could be reckoned is refused here, not later.</summary>
internal static class ForecastJsonReader
{
    /// <summary>The ledger.</summary>
    public static ImmutableArray<KeptForecast> Read(JsonElement json)
    {
        string? schema = Text(json, "schema");
        return schema == ForecastJson.Schema ? List(json, "forecasts", Kept) : throw new ArgumentException($"It is of the form {schema}, not {ForecastJson.Schema}.");
    }

    private static KeptForecast Kept(JsonElement json) => new()
    {
        MadeOn = RequiredDay(json, "made"),
        Measure = Required(json, "measure"),
        Basis = Word<ForecastBasis>(Required(json, "basis")),
        LibraryVersion = Required(json, "library"),
        Model = Model(json),
        Target = Part(json, "target", target => new KeptTarget(
            Required(target, "milestone"), RequiredNumber(target, "week"), RequiredNumber(target, "value"), Word<Direction>(Required(target, "better")))),
        Score = Part(json, "score", Score),
    };

    private static ForecastModel Model(JsonElement json)
    {
        ForecastModel model = new(Word<ErrorScale>(Required(json, "scale")), List(json, "series", Series), RequiredNumber(json, "error_correlation"));
        return model.Scale != ErrorScale.Ordinal && !model.Series.IsEmpty
            && (model.Scale != ErrorScale.Logarithmic || model.Series.All(one => one.Curve.Early.Level > 0 && one.Curve.Late.Level > 0 && one.Seen.All(seen => seen.Value > 0)))
            ? model
            : throw new ArgumentException("It holds a model that cannot be reckoned.");
    }

    private static ForecastSeries Series(JsonElement json) => new(
        Required(json, "measure"), RequiredNumber(json, "sign"), Curve(json.GetProperty("curve")), Positive(json, "error"),
        List(json, "readings", seen => new SeenValue(RequiredNumber(seen, "week"), RequiredNumber(seen, "value"), Positive(seen, "error"))));

    private static RecoveryCurve Curve(JsonElement json)
    {
        ImmutableArray<RecoveryRate> rates = List(json, "rates", rate => new RecoveryRate(Positive(rate, "weeks"), Positive(rate, "weight")));
        RecoveryCurve curve = new(
            Anchor(json.GetProperty("early")), Anchor(json.GetProperty("late")), RequiredNumber(json, "correlation"), rates,
            RequiredNumber(json, "misfit_sd"), Positive(json, "misfit_weeks"));
        return curve.Late.Week > curve.Early.Week && !rates.IsEmpty && Math.Abs(curve.Correlation) < 1
            ? curve
            : throw new ArgumentException("It holds a curve that cannot be reckoned.");
    }

    private static RecoveryAnchor Anchor(JsonElement json) => new(RequiredNumber(json, "week"), RequiredNumber(json, "value"), Positive(json, "sd"));

    private static ForecastScore Score(JsonElement json) => new(
        RequiredDay(json, "on"), RequiredNumber(json, "value"), RequiredNumber(json, "low_80"), RequiredNumber(json, "high_80"),
        json.GetProperty("inside").GetBoolean(), RequiredNumber(json, "z"), json.TryGetProperty("brier", out _) ? RequiredNumber(json, "brier") : null);

    private static double Positive(JsonElement json, string name) =>
        RequiredNumber(json, name) is double number && number > 0 ? number : throw new ArgumentException($"{name} is not over 0.");
}
