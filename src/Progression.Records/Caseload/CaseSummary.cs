using System.Text.Json;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>The short texts of a case that lists show. Days are year-month-day, so they sort as text.</summary>
public static class CaseSummary
{
    /// <summary>The day of the operation.</summary>
    public const string Operation = "operation";

    /// <summary>Which knee.</summary>
    public const string Side = "side";

    /// <summary>The day of the latest assessment; missing when there is none.</summary>
    public const string LastAssessed = "assessed";

    /// <summary>The day of the latest logged session; missing when none was logged.</summary>
    public const string LastSession = "session";

    /// <summary>The regimen of the plan; missing when there is no plan.</summary>
    public const string Regimen = "regimen";

    /// <summary>Weeks of the plan; missing when there is no plan.</summary>
    public const string Weeks = "weeks";

    /// <summary>Takes them from a stored body.</summary>
    public static IReadOnlyDictionary<string, string> Of(RecordKind kind, JsonElement body)
    {
        Dictionary<string, string> fields = [];
        if (kind == RecordKind.Case && body.TryGetProperty("operation", out JsonElement operation) && operation.ValueKind == JsonValueKind.Object)
        {
            Take(fields, Operation, operation, "date");
            Take(fields, Side, operation, "side");
            TakeLastDay(fields, LastAssessed, body, "assessments");
            TakeLastDay(fields, LastSession, body, "sessions");
        }
        else if (kind == RecordKind.Plan)
        {
            Take(fields, Regimen, body, "regimen");
            Take(fields, Weeks, body, "weeks");
        }

        return fields;
    }

    private static void TakeLastDay(Dictionary<string, string> fields, string name, JsonElement from, string list)
    {
        if (from.TryGetProperty(list, out JsonElement items) && items.ValueKind == JsonValueKind.Array && items.GetArrayLength() > 0)
        {
            Take(fields, name, items[items.GetArrayLength() - 1], "date");
        }
    }

    private static void Take(Dictionary<string, string> fields, string name, JsonElement from, string property)
    {
        if (from.ValueKind == JsonValueKind.Object && from.TryGetProperty(property, out JsonElement value))
        {
            fields[name] = value.ToString();
        }
    }
}
