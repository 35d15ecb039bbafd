using System.Text.Json;
using Progression.Core.Clinic;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using static Progression.Records.Json.JsonReading;

namespace Progression.Records.Reviews;

/// <summary>Reads what <see cref="ReviewJson"/> writes.</summary>
internal static class ReviewJsonReader
{
    /// <summary>The record.</summary>
    public static ReviewRecord Read(JsonElement json)
    {
        string? schema = Text(json, "schema");
        return schema == ReviewJson.Schema ? new(List(json, "acts", Act)) : throw new ArgumentException($"It is of the form {schema}, not {ReviewJson.Schema}.");
    }

    private static ReviewAct Act(JsonElement json) => new()
    {
        Step = Word<ReviewStep>(Required(json, "step")),
        By = Person(json.GetProperty("by")),
        At = InstantText.Read(Required(json, "at")) ?? throw new ArgumentException("It holds a time that is none."),
        Plan = Plan(json.GetProperty("plan")),
        Comments = List(json, "comments", Comment),
        Meaning = Text(json, "meaning") is { } meaning ? Word<SignatureMeaning>(meaning) : null,
        Risk = Part(json, "risk", Risk),
    };

    private static ReviewPerson Person(JsonElement json) => new(Required(json, "account"), Required(json, "name"), Word<ClinicRole>(Required(json, "role")));

    private static ReviewedPlan Plan(JsonElement json) => new(RequiredWhole(json, "rev"), Required(json, "hash"));

    private static ReviewComment Comment(JsonElement json) =>
        new(Text(json, "lane") is { } lane ? new CellAddress(lane, RequiredWhole(json, "week")) : null, Required(json, "text"));

    private static PlanRisk Risk(JsonElement json) => new(
        RequiredWhole(json, "stops"), RequiredWhole(json, "severe"), RequiredWhole(json, "warnings"), RequiredWhole(json, "overrides"), Whole(json, "changed"));
}
