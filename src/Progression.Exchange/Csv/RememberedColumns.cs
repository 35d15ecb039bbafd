using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Core.People;

namespace Progression.Exchange.Csv;

/// <summary>
/// What a person said about files with a header, kept for the next file with the same one. It holds heads and choices and nothing of a patient. A file that
/// cannot be read remembers nothing and is left as it is.
/// </summary>
/// <param name="path">Where it is; it need not be there.</param>
public sealed class RememberedColumns(string path)
{
    private const string Schema = "columns/1";
    private const int MostFiles = 200;
    private const int MostBytes = 1_000_000;

    /// <summary>What was said about files with a header; nothing where none was.</summary>
    /// <param name="content">What the files are about.</param>
    /// <param name="heads">The header.</param>
    public CsvChoices Of(CsvContent content, ImmutableArray<string> heads) =>
        Read()?["files"]!.AsArray().OfType<JsonObject>().Where(file => IsOf(file, content, heads)).Select(Choices).FirstOrDefault() ?? CsvChoices.None;

    /// <summary>Keeps what was said, in place of what was said before.</summary>
    /// <param name="content">What the files are about.</param>
    /// <param name="heads">The header.</param>
    /// <param name="choices">What was said.</param>
    /// <returns>Null; or why it is not kept, as a sentence.</returns>
    public string? Keep(CsvContent content, ImmutableArray<string> heads, CsvChoices choices)
    {
        ArgumentNullException.ThrowIfNull(choices);
        if (File.Exists(path) && Read() is null)
        {
            return $"{path} is not a file of remembered columns; it was left as it is.";
        }

        IEnumerable<JsonNode> others = Read()?["files"]!.AsArray().OfType<JsonObject>().Where(file => !IsOf(file, content, heads)).Select(file => file.DeepClone()).TakeLast(MostFiles - 1) ?? [];
        JsonObject now = new() { ["schema"] = Schema, ["files"] = new JsonArray([.. others, Node(content, heads, choices)]) };
        try
        {
            Write(now.ToJsonString());
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }

    // Aside first, then renamed, so that there is always a whole file.
    private void Write(string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        string aside = path + ".new";
        File.WriteAllText(aside, text + "\n");
        File.Move(aside, path, overwrite: true);
    }

    private JsonObject? Read()
    {
        try
        {
            FileInfo file = new(path);
            return file.Exists && file.Length <= MostBytes && JsonNode.Parse(File.ReadAllText(path)) is JsonObject all
                && (string?)all["schema"] == Schema && all["files"] is JsonArray files && files.All(IsWhole) ? all : null;
        }
        catch (Exception fault) when (fault is JsonException or IOException or UnauthorizedAccessException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }
    }

    private static bool IsWhole(JsonNode? file) => file is JsonObject one && one["content"] is not null && one["heads"] is JsonArray heads && Texts(heads) is not null
        && one["columns"] is JsonArray columns && columns.All(column => column is JsonArray { Count: 2 } pair && Texts(pair) is not null);

    private static bool IsOf(JsonObject file, CsvContent content, ImmutableArray<string> heads) =>
        (string?)file["content"] == content.ToString() && Texts(file["heads"]!.AsArray())!.SequenceEqual(heads);

    private static string[]? Texts(JsonArray array) => array.All(one => one?.GetValueKind() == JsonValueKind.String) ? [.. array.Select(one => (string)one!)] : null;

    private static JsonObject Node(CsvContent content, ImmutableArray<string> heads, CsvChoices choices) => new()
    {
        ["content"] = content.ToString(),
        ["heads"] = new JsonArray([.. heads.Select(head => JsonValue.Create(head))]),
        ["columns"] = new JsonArray([.. choices.Columns.Select(one => new JsonArray(one.Head, one.Means))]),
        ["days"] = choices.Days?.ToString(),
        ["decimals"] = choices.Decimals?.ToString(),
        ["deficits"] = choices.Deficits?.ToString(),
    };

    private static CsvChoices Choices(JsonObject file) => new()
    {
        Columns = [.. file["columns"]!.AsArray().Select(one => ((string)one![0]!, (string)one[1]!))],
        Days = Word<DayOrder>(file["days"]),
        Decimals = Word<DecimalMark>(file["decimals"]),
        Deficits = Word<DeficitSign>(file["deficits"]),
    };

    private static T? Word<T>(JsonNode? node)
        where T : struct, Enum => node?.GetValueKind() == JsonValueKind.String && Enum.TryParse((string)node!, out T value) && Enum.IsDefined(value) ? value : null;
}
