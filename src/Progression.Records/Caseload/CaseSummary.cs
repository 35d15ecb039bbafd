using System.Globalization;
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

    /// <summary>How many kept forecasts have been scored; missing when none were kept.</summary>
    public const string ForecastsScored = "scored";

    /// <summary>How many of those had their reading inside the band; missing when none were kept.</summary>
    public const string ForecastHits = "hits";

    /// <summary>A count among the fields of a row; 0 when it is missing.</summary>
    public static int Count(CaseRow row, string field)
    {
        ArgumentNullException.ThrowIfNull(row);
        return int.TryParse(row.Fields.GetValueOrDefault(field), NumberStyles.None, CultureInfo.InvariantCulture, out int count) ? count : 0;
    }

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
        else if (kind == RecordKind.Forecasts && body.TryGetProperty("forecasts", out JsonElement forecasts) && forecasts.ValueKind == JsonValueKind.Array)
        {
            JsonElement[] inside = [.. forecasts.EnumerateArray().Select(Inside).OfType<JsonElement>()];
            fields[ForecastsScored] = inside.Length.ToString(CultureInfo.InvariantCulture);
            fields[ForecastHits] = inside.Count(one => one.ValueKind == JsonValueKind.True).ToString(CultureInfo.InvariantCulture);
        }

        return fields;
    }

    /// <summary>Whether the reading lay inside, of a kept forecast that was scored; null of any other.</summary>
    private static JsonElement? Inside(JsonElement kept) =>
        kept.ValueKind == JsonValueKind.Object && kept.TryGetProperty("score", out JsonElement score) && score.ValueKind == JsonValueKind.Object
            && score.TryGetProperty("inside", out JsonElement inside) ? inside : null;

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
