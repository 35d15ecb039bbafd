using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Records.Plans;

namespace Progression.App.Commands.Reassess;

/// <summary>A comparison as JSON, described in shared/schema.</summary>
internal static class CompareAnswer
{
    internal static JsonObject Of(Case patient, Comparison comparison, double level) => new()
    {
        ["schema"] = "compare/1",
        ["code"] = patient.Code.Text,
        ["level_percent"] = level,
        ["visits"] = new JsonArray([.. comparison.Visits.Select(day => (JsonNode?)Day(day))]),
        ["pre_op"] = comparison.HasPreOp,
        ["measures"] = new JsonArray([.. comparison.Rows.Select(Row)]),
        ["false_alarm"] = comparison.FalseAlarm,
    };

    private static JsonObject Row(ComparisonRow row) => new()
    {
        ["id"] = row.Measure.Id,
        ["title"] = row.Measure.Title,
        ["unit"] = row.Measure.Unit,
        ["values"] = new JsonArray([.. row.Values.Select(value => value is double number ? JsonValue.Create(Rounded(number)) : null)]),
        ["last"] = row.Last is { } last ? Of(last) : null,
        ["since_first"] = row.SinceFirst is { } first ? Of(first) : null,
    };

    private static JsonObject Of(Change change) => new()
    {
        ["from"] = Day(change.From),
        ["to"] = Day(change.To),
        ["old"] = Rounded(change.Old),
        ["new"] = Rounded(change.New),
        ["difference"] = Rounded(change.Difference),
        ["better"] = change.IsBetter,
        ["class"] = change.Class switch
        {
            ChangeClass.Improved => "improved",
            ChangeClass.Worse => "worse",
            ChangeClass.NoDetectableChange => "no detectable change",
            _ => null,
        },
        ["why_not"] = change.WhyNot,
        ["words"] = change.Words,
        ["detectable"] = change.Detectable is double detectable ? Rounded(detectable) : null,
        ["importance"] = change.Importance switch
        {
            Importance.Important => "important",
            Importance.CouldBe => "could be",
            Importance.NotShown => "not shown",
            _ => "not known",
        },
        ["possibly_worse"] = change.PossiblyWorse,
        ["notes"] = new JsonArray([.. change.Notes.Select(note => (JsonNode?)note)]),
        ["inputs"] = PlanJson.Inputs(change.Inputs) ?? [],
        ["source"] = PlanJson.Source(change.Source),
    };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static double Rounded(double value) => Math.Round(value, 6);
}
