using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Records.Json;
using Progression.Records.Storage;
using Progression.Records.Yaml;

namespace Progression.Records.Audit;

/// <summary>An entry of the audit chain as the JSON text that is stored. What is not there is left out.</summary>
public static class AuditNoteJson
{
    /// <summary>The value of the field "schema"; another form gets another number.</summary>
    public const string Schema = "audit/1";

    /// <summary>The canonical text of an entry.</summary>
    public static string Write(AuditNote note)
    {
        ArgumentNullException.ThrowIfNull(note);
        return JsonFields.Text(JsonFields.Of(
            ("schema", Schema),
            ("act", EnumWords.Of(note.Act)),
            ("case", note.CaseCode),
            ("kind", note.Kind is { } kind ? kind.Word() : null),
            ("rev", note.Revision?.Revision),
            ("hash", note.Revision?.Hash),
            ("what", note.What.Length == 0 ? null : note.What)));
    }

    /// <summary>The text of the entry that names the gaps a repair left: see <see cref="JournalGap"/>.</summary>
    public static string WriteRepair(ImmutableArray<string> breaks) => JsonFields.Text(JsonFields.Of(
        ("schema", Schema), ("act", EnumWords.Of(AuditAct.Repaired)), ("what", FormattableString.Invariant($"{breaks.Length} breaks in the chains")),
        (JournalGap.Member, new JsonArray([.. breaks.Select(one => JsonValue.Create(one))]))));

    /// <summary>The entry of a text that <see cref="Write"/> made.</summary>
    /// <exception cref="FormatException">The text is not such an entry.</exception>
    public static AuditNote Read(string json) => JsonReading.Of(json, "audit entry", Read);

    private static AuditNote Read(JsonElement body) => new(
        Enum.GetValues<AuditAct>().First(act => EnumWords.Of(act) == body.GetProperty("act").GetString()),
        Text(body, "case"),
        RecordKindWords.Parse(Text(body, "kind")),
        Text(body, "hash") is { } hash ? new RevisionRef(body.GetProperty("rev").GetInt32(), hash) : null,
        Text(body, "what") ?? "");

    private static string? Text(JsonElement body, string name) => body.TryGetProperty(name, out JsonElement value) ? value.GetString() : null;
}
