using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Progression.Records.Yaml;

namespace Progression.Records.Json;

/// <summary>Reads stored JSON. A text of another form ends in one of the exceptions that <see cref="Of"/> turns into its own.</summary>
internal static class JsonReading
{
    /// <summary>What a text holds.</summary>
    /// <param name="json">The text.</param>
    /// <param name="what">What it should be, for the message.</param>
    /// <param name="read">Reads its root.</param>
    /// <exception cref="FormatException">The text is not of that form.</exception>
    public static T Of<T>(string json, string what, Func<JsonElement, T> read)
    {
        ArgumentNullException.ThrowIfNull(json);
        try
        {
            using JsonDocument document = JsonDocument.Parse(json);
            return read(document.RootElement);
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException or KeyNotFoundException or ArgumentException)
        {
            throw new FormatException($"The text is not a stored {what}: {failure.Message}", failure);
        }
    }

    public static ImmutableArray<T> List<T>(JsonElement json, string name, Func<JsonElement, T> read) =>
        json.TryGetProperty(name, out JsonElement list) ? [.. list.EnumerateArray().Select(read)] : [];

    public static ImmutableSortedDictionary<string, T> Map<T>(JsonElement json, string name, Func<string, JsonElement, T> read) =>
        json.GetProperty(name).EnumerateObject().ToImmutableSortedDictionary(field => field.Name, field => read(field.Name, field.Value), StringComparer.Ordinal);

    public static T? Amount<T>(JsonElement json, string name, Func<double, T> make)
        where T : class => json.TryGetProperty(name, out JsonElement value) ? make(value.GetDouble()) : null;

    public static T? Part<T>(JsonElement json, string name, Func<JsonElement, T> read)
        where T : class => json.TryGetProperty(name, out JsonElement value) ? read(value) : null;

    public static T Word<T>(string words)
        where T : struct, Enum => EnumWords.Read<T>(words) ?? throw new ArgumentException($"It holds a word that is no {typeof(T).Name}.");

    public static string? Text(JsonElement json, string name) => json.TryGetProperty(name, out JsonElement value) ? value.GetString() : null;

    public static string Required(JsonElement json, string name) => json.GetProperty(name).GetString() ?? throw new ArgumentException($"{name} is null.");

    public static int? Whole(JsonElement json, string name) => json.TryGetProperty(name, out JsonElement value) ? value.GetInt32() : null;

    public static int RequiredWhole(JsonElement json, string name) => json.GetProperty(name).GetInt32();

    public static double RequiredNumber(JsonElement json, string name) =>
        json.GetProperty(name).GetDouble() is double number && double.IsFinite(number) ? number : throw new ArgumentException($"{name} is not a number that can be kept.");

    public static DateOnly? Day(JsonElement json, string name) => json.TryGetProperty(name, out _) ? RequiredDay(json, name) : null;

    public static DateOnly RequiredDay(JsonElement json, string name) =>
        DateOnly.TryParseExact(json.GetProperty(name).GetString(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : throw new ArgumentException($"{name} is not a day.");
}
