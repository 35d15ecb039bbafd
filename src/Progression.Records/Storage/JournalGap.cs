using System.Collections.Immutable;
using System.Text.Json;

namespace Progression.Records.Storage;

/// <summary>
/// How a repair is written down: an audit entry whose member "breaks" holds the hashes of the lines that do not go on from what stands before them, because
/// something between was damaged and was taken out.
/// </summary>
public static class JournalGap
{
    /// <summary>The member of the entry's body.</summary>
    public const string Member = "breaks";

    /// <summary>The hashes that an entry acknowledges; none for every other entry.</summary>
    internal static ImmutableArray<string> Acknowledged(JournalEntry entry)
    {
        if (entry.Stamp.Kind != RecordKind.Audit || !entry.Body.Contains($"\"{Member}\":[", StringComparison.Ordinal))
        {
            return [];
        }

        using JsonDocument body = JsonDocument.Parse(entry.Body);
        return body.RootElement.TryGetProperty(Member, out JsonElement breaks) && breaks.ValueKind == JsonValueKind.Array
            ? [.. breaks.EnumerateArray().Where(one => one.ValueKind == JsonValueKind.String).Select(one => one.GetString()!)]
            : [];
    }
}
