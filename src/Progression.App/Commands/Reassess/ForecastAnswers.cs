using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Records.Plans;

namespace Progression.App.Commands.Reassess;

/// <summary>A forecast as JSON, unrounded. The form is stable and described in shared/schema.</summary>
internal static class ForecastAnswers
{
    internal static JsonObject Json(Case patient, Measure measure, ForecastAnswer answer) => new()
    {
        ["schema"] = "forecast/1",
        ["caution"] = ForecastText.Caution,
        ["code"] = patient.Code.Text,
        ["measure"] = measure.Id,
        ["title"] = measure.Title,
        ["unit"] = measure.Unit,
        ["why_not"] = answer.WhyNot,
        ["forecast"] = answer.Forecast is { } forecast ? Json(forecast) : null,
    };

    private static JsonObject Json(Forecast forecast) => new()
    {
        ["as_of"] = forecast.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        ["basis"] = forecast.Basis switch { ForecastBasis.Population => "population", ForecastBasis.Clinic => "clinic", _ => "own readings" },
        ["basis_words"] = forecast.BasisWords,
        ["source"] = PlanJson.Source(forecast.Source),
        ["readings"] = forecast.Readings,
        ["error_scale"] = forecast.Measure.Scale == ErrorScale.Logarithmic ? "logarithmic" : "linear",
        ["error"] = forecast.ErrorUsed,
        ["measured"] = new JsonArray([.. forecast.Measured.Select(one => new JsonObject { ["week"] = one.Week, ["value"] = one.Value })]),
        ["surprise"] = forecast.Surprise is { } surprise ? new JsonObject { ["z"] = surprise.Z, ["off"] = surprise.IsOff, ["words"] = surprise.Words } : null,
        ["points"] = new JsonArray([.. forecast.Points.Select(Json)]),
        ["milestones"] = new JsonArray([.. forecast.Milestones.Select(Json)]),
    };

    private static JsonObject Json(ForecastPoint point) => new()
    {
        ["week"] = point.Week,
        ["median"] = point.Median,
        ["low_80"] = point.Low80,
        ["high_80"] = point.High80,
        ["low_90"] = point.Low90,
        ["high_90"] = point.High90,
        ["seen_low_80"] = point.SeenLow80,
        ["seen_high_80"] = point.SeenHigh80,
        ["beyond_basis"] = point.BeyondPrior,
    };

    private static JsonObject Json(MilestoneOutlook one) => new()
    {
        ["id"] = one.Milestone.Id,
        ["title"] = one.Milestone.Title,
        ["week"] = one.Milestone.Week,
        ["target"] = one.Milestone.Target,
        ["by_week"] = one.ByWeek,
        ["chance_true"] = one.ChanceTrue,
        ["chance_shown"] = one.ChanceShown,
        ["median_week"] = one.MedianWeek,
        ["early_week"] = one.EarlyWeek,
        ["late_week"] = one.LateWeek,
        ["not_by_horizon"] = one.NotByHorizon,
        ["horizon_week"] = one.HorizonWeek,
        ["words"] = one.Words,
    };
}
