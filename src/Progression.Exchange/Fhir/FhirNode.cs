using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.Entry;

namespace Progression.Exchange.Fhir;

/// <summary>Small parts of FHIR R4 JSON. Members stand in the order of the specification, which its XML form asks for; nothing is written empty.</summary>
internal static class FhirNode
{
    /// <summary>An object of the members that have a value; null when none has.</summary>
    public static JsonObject? Of(params ReadOnlySpan<(string Name, JsonNode? Value)> members)
    {
        JsonObject made = [];
        foreach ((string name, JsonNode? value) in members)
        {
            if (value is not null)
            {
                made.Add(name, value);
            }
        }

        return made.Count == 0 ? null : made;
    }

    /// <summary>A resource; its type stands first.</summary>
    public static JsonObject Resource(string type, params ReadOnlySpan<(string Name, JsonNode? Value)> members) =>
        Of([("resourceType", type), .. members])!;

    /// <summary>An array; null when there is nothing to put in.</summary>
    public static JsonArray? List(IEnumerable<JsonNode?> items)
    {
        JsonArray list = [.. items.Where(item => item is not null)];
        return list.Count == 0 ? null : list;
    }

    /// <summary>An array of one; null for none.</summary>
    public static JsonArray? List(JsonNode? item) => List([item]);

    /// <summary>Words on one harmless line; null when there are none, as FHIR has no empty strings.</summary>
    public static JsonNode? Words(string? text) => SafeText.OneLine(text).Trim() is { Length: > 0 } safe ? JsonValue.Create(safe) : null;

    /// <summary>A day: "2026-03-06".</summary>
    public static JsonNode Day(DateOnly day) => JsonValue.Create(day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));

    /// <summary>A moment in UTC, to the millisecond: "2026-03-06T09:30:00.000Z".</summary>
    public static JsonNode Instant(DateTimeOffset at) => JsonValue.Create(at.ToUniversalTime().ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture));

    /// <summary>A period of whole days, both included.</summary>
    public static JsonNode Period(DateOnly start, DateOnly end) => Of(("start", Day(start)), ("end", Day(end)))!;

    /// <summary>A code of a system.</summary>
    public static JsonNode Coding(string system, string code, string? display = null) => Of(("system", system), ("code", code), ("display", Words(display)))!;

    /// <summary>A concept: words, with the codes there are for it.</summary>
    public static JsonNode? Concept(string? text, params ReadOnlySpan<JsonNode> codings) => Of(("coding", List([.. codings])), ("text", Words(text)));

    /// <summary>An identifier.</summary>
    public static JsonNode Identifier(string system, string value) => Of(("system", system), ("value", value))!;

    /// <summary>A value with its unit in UCUM, or bare where that is null; every digit of the value is kept.</summary>
    public static JsonNode Quantity(double value, UcumUnit? unit) =>
        Of(("value", Number(value)), ("unit", Words(unit?.Shown)), ("system", unit is null ? null : UcumUnit.System), ("code", unit?.Code))!;

    // The writer gives the shortest text that reads back as the same number; minus zero is no reading.
    private static JsonValue Number(double value) => JsonValue.Create(value == 0 ? 0 : value);
}
