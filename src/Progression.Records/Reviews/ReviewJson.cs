using System.Text.Json.Nodes;
using Progression.Core.Reviews;
using Progression.Records.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Reviews;

/// <summary>What was done about the reviews of a plan as the JSON text that is stored: all acts, oldest first. What is not there is left out.</summary>
public static class ReviewJson
{
    /// <summary>The value of the field "schema"; another form gets another number.</summary>
    public const string Schema = "review/1";

    /// <summary>The canonical text of a record.</summary>
    public static string Write(ReviewRecord record) => JsonFields.Text(Node(record));

    /// <summary>The same as an object, to be put into a larger answer.</summary>
    public static JsonObject Node(ReviewRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return JsonFields.Of(("schema", Schema), ("acts", JsonFields.List(record.Acts.Select(Write))));
    }

    /// <summary>What speaks against a plan, as an object.</summary>
    public static JsonObject Node(PlanRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return JsonFields.Of(
            ("stops", risk.Stops), ("severe", risk.Severe), ("warnings", risk.Warnings), ("overrides", risk.Overrides), ("changed", risk.Changed is int changed ? changed : null));
    }

    /// <summary>The record of a text that <see cref="Write(ReviewRecord)"/> made.</summary>
    /// <exception cref="FormatException">The text is not such a record.</exception>
    public static ReviewRecord Read(string json) => JsonReading.Of(json, "review", ReviewJsonReader.Read);

    private static JsonObject Write(ReviewAct act) => JsonFields.Of(
        ("step", EnumWords.Of(act.Step)),
        ("by", JsonFields.Of(("account", act.By.UserId), ("name", act.By.Name), ("role", EnumWords.Of(act.By.Role)))),
        ("at", InstantText.Of(act.At)),
        ("plan", JsonFields.Of(("rev", act.Plan.Revision), ("hash", act.Plan.Hash))),
        ("comments", JsonFields.List(act.Comments.Select(Write))),
        ("meaning", act.Meaning is { } meaning ? EnumWords.Of(meaning) : null),
        ("says", act.Meaning is { } said ? SignatureWords.Of(said) : null),
        ("risk", act.Risk is { } risk ? Node(risk) : null));

    private static JsonObject Write(ReviewComment comment) =>
        JsonFields.Of(("lane", comment.Cell?.Lane), ("week", comment.Cell is { } cell ? cell.Week : null), ("text", comment.Text));
}
