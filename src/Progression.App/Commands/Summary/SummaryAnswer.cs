using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Adherence;
using Progression.Core.Outcomes;
using Progression.Core.Plots;

namespace Progression.App.Commands.Summary;

/// <summary>A summary as JSON, unrounded. The form is stable and described in shared/schema.</summary>
internal static class SummaryAnswer
{
    internal static JsonObject Of(ClinicSummary summary) => new()
    {
        ["schema"] = "summary/1",
        ["today"] = summary.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        ["least_people"] = summary.Least.Value,
        ["waits"] = WaitPlot.Caution,
        ["adherence"] = PlanAdherence.Definition,
        ["figures"] = new JsonArray([.. OutcomeRows.Of(summary).Select(Of)]),
    };

    private static JsonObject Of(OutcomeRow row) => new()
    {
        ["group"] = row.Group,
        ["what"] = row.What,
        ["id"] = row.Id,
        ["title"] = row.Title,
        ["unit"] = row.Unit,
        ["people"] = row.People,
        ["events"] = row.Events,
        ["value"] = row.Value,
        ["low"] = row.Low,
        ["high"] = row.High,
        ["range"] = row.Range.Length == 0 ? null : row.Range,
        ["withheld"] = row.IsWithheld,
    };
}
