using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Records.Json;

namespace Progression.Records.Storage;

/// <summary>
/// Which forms of bodies this program knows, by the word in their member "schema": a name and a number, "plan/1". A stored body is never changed; one of an
/// older form is brought forward, step by step, when it is read.
/// </summary>
/// <param name="Current">The forms that are written now.</param>
/// <param name="Steps">For each older form the step that makes the next one of it, its "schema" included.</param>
public sealed record BodySchemas(ImmutableArray<string> Current, ImmutableDictionary<string, Func<JsonObject, JsonObject>> Steps)
{
    /// <summary>No form is known, so every body is given as it is.</summary>
    public static BodySchemas None { get; } = new([], ImmutableDictionary<string, Func<JsonObject, JsonObject>>.Empty);

    /// <summary>The same with one step more.</summary>
    /// <param name="from">The older form.</param>
    /// <param name="step">Makes the next form of it; it must not use anything but its argument.</param>
    public BodySchemas With(string from, Func<JsonObject, JsonObject> step) => this with { Steps = Steps.Add(from, step) };

    /// <summary>A body in the form that is written now; as it is when it says no form, or one of a name that is not known here.</summary>
    /// <exception cref="StoreException">A newer program saved it.</exception>
    public string Forward(RevisionStamp stamp, string body)
    {
        ArgumentNullException.ThrowIfNull(stamp);
        if (Current.IsEmpty || SchemaOf(body) is not { } schema || Current.Contains(schema))
        {
            return body;
        }

        return Steps.ContainsKey(schema) ? Stepped(schema, body)
            : NumberOf(schema) is int number && Current.FirstOrDefault(one => NameOf(one) == NameOf(schema)) is { } known && number > NumberOf(known)
            ? throw new StoreException(
                StoreFault.Newer,
                $"Revision {stamp.Revision} of {stamp.Kind.Word()} '{stamp.CaseCode}' was saved by a newer version of this program ({schema}; this one knows {known}). Update the program to read it; it is whole, and everything else can be read.")
            : body;
    }

    private string Stepped(string schema, string body)
    {
        JsonObject value = JsonNode.Parse(body)!.AsObject();
        for (int steps = 0; Steps.TryGetValue(schema, out Func<JsonObject, JsonObject>? step); steps++)
        {
            value = step(value);
            string next = value["schema"]?.GetValue<string>() ?? "";
            schema = steps < Steps.Count && next != schema ? next : throw new InvalidOperationException($"The step from {schema} does not lead on.");
        }

        return CanonicalJson.Of(value.ToJsonString());
    }

    private static string? SchemaOf(string body)
    {
        using JsonDocument document = JsonDocument.Parse(body);
        return document.RootElement.TryGetProperty("schema", out JsonElement schema) && schema.ValueKind == JsonValueKind.String ? schema.GetString() : null;
    }

    private static string NameOf(string schema) => schema.Split('/')[0];

    private static int? NumberOf(string schema) => schema.Split('/') is [_, var digits] && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;
}
