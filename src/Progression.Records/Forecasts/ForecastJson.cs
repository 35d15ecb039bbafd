using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Records.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Forecasts;

/// <summary>The kept forecasts of a case as the JSON text that is stored: equal ledgers give equal texts. What is not known is left out.</summary>
public static class ForecastJson
{
    /// <summary>The value of the field "schema"; another form gets another number.</summary>
    public const string Schema = "forecasts/1";

    /// <summary>The canonical text of a ledger, oldest forecast first.</summary>
    public static string Write(ImmutableArray<KeptForecast> kept) =>
        JsonFields.Text(JsonFields.Of(("schema", Schema), ("forecasts", JsonFields.List(kept.Select(Write)))));

    /// <summary>The ledger of a text that <see cref="Write(ImmutableArray{KeptForecast})"/> made.</summary>
    /// <exception cref="FormatException">The text is not such a ledger.</exception>
    public static ImmutableArray<KeptForecast> Read(string json) => JsonReading.Of(json, "ledger of forecasts", ForecastJsonReader.Read);

    private static JsonObject Write(KeptForecast kept) => JsonFields.Of(
        ("made", JsonFields.Day(kept.MadeOn)),
        ("measure", kept.Measure),
        ("basis", EnumWords.Of(kept.Basis)),
        ("library", kept.LibraryVersion),
        ("scale", EnumWords.Of(kept.Model.Scale)),
        ("error_correlation", kept.Model.ErrorCorrelation),
        ("series", JsonFields.List(kept.Model.Series.Select(Write))),
        ("target", kept.Target is { } target ? JsonFields.Of(
            ("milestone", target.Milestone), ("week", target.Week), ("value", target.Value), ("better", EnumWords.Of(target.Better))) : null),
        ("score", kept.Score is { } score ? Write(score) : null));

    private static JsonObject Write(ForecastSeries series) => JsonFields.Of(
        ("measure", series.Measure), ("sign", series.Sign), ("error", series.Error), ("curve", Write(series.Curve)),
        ("readings", JsonFields.List(series.Seen.Select(seen => JsonFields.Of(("week", seen.Week), ("value", seen.Value), ("error", seen.Error))))));

    private static JsonObject Write(RecoveryCurve curve) => JsonFields.Of(
        ("early", Write(curve.Early)),
        ("late", Write(curve.Late)),
        ("correlation", curve.Correlation),
        ("rates", JsonFields.List(curve.Rates.Select(rate => JsonFields.Of(("weeks", rate.Weeks), ("weight", rate.Weight))))),
        ("misfit_sd", curve.MisfitSpread),
        ("misfit_weeks", curve.MisfitWeeks));

    private static JsonObject Write(RecoveryAnchor anchor) => JsonFields.Of(("week", anchor.Week), ("value", anchor.Level), ("sd", anchor.Spread));

    private static JsonObject Write(ForecastScore score) => JsonFields.Of(
        ("on", JsonFields.Day(score.On)), ("value", score.Value), ("low_80", score.Low80), ("high_80", score.High80),
        ("inside", score.Inside), ("z", score.Z), ("brier", score.Brier));
}
