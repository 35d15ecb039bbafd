using System.Text.Json.Nodes;
using Progression.Records.Yaml;

namespace Progression.Records.Json;

/// <summary>Writes JSON objects in one way only: names in ordinal order, no white space, null left out.</summary>
internal static class JsonFields
{
    /// <summary>An object of the fields that have a value.</summary>
    public static JsonObject Of(params ReadOnlySpan<(string Name, JsonNode? Value)> fields)
    {
        SortedDictionary<string, JsonNode?> sorted = new(StringComparer.Ordinal);
        foreach ((string name, JsonNode? value) in fields)
        {
            if (value is not null)
            {
                sorted.Add(name, value);
            }
        }

        return new JsonObject(sorted);
    }

    /// <summary>An object with one field for each pair, in ordinal order.</summary>
    public static JsonObject Of(IEnumerable<KeyValuePair<string, JsonNode?>> fields) => Of([.. fields.Select(field => (field.Key, field.Value))]);

    /// <summary>An array; null when there is nothing to put in.</summary>
    public static JsonArray? List(IEnumerable<JsonNode?> items)
    {
        JsonArray list = [.. items];
        return list.Count == 0 ? null : list;
    }

    /// <summary>A day as year-month-day; null for none.</summary>
    public static string? Day(DateOnly? day) => day is DateOnly known ? DaySpan.Text(known) : null;

    /// <summary>The text of an object, in the form that is hashed.</summary>
    public static string Text(JsonObject value) => CanonicalJson.Of(value.ToJsonString());
}
