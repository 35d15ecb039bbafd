using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Records.Json;
using Progression.Records.Plans;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>The text of a draft file and back.</summary>
internal static class DraftJson
{
    private const string Schema = "kept-draft/2";
    private const string TimeForm = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public static string Of(KeptDraft draft, DraftSession session, DateTimeOffset at) => Text(session, at, draft.Plan.Code, (
        "plan", JsonFields.Of(
            ("based_on", draft.BasedOn is { } based ? JsonFields.Of(("revision", based.Revision), ("hash", based.Hash)) : null),
            ("plan", PlanJson.Node(draft.Plan)))));

    public static string Of(KeptForm form, DraftSession session, DateTimeOffset at) => Text(session, at, form.Code, (
        "form", JsonFields.Of(("id", form.Form), ("at", form.At), ("fields", Texts(form.Fields)), ("further", Texts(form.Further)))));

    /// <exception cref="FormatException">The text is not that of a draft.</exception>
    public static FoundDraft Read(string text, string file) => JsonReading.Of(text, "draft", json => Read(json, file));

    private static FoundDraft Read(JsonElement json, string file)
    {
        if (JsonReading.Text(json, "schema") != Schema)
        {
            throw new ArgumentException("It is of another form.");
        }

        CaseCode? code = JsonReading.Text(json, "case") is { } written ? CaseCode.Parse(written) ?? throw new ArgumentException("Its case has no code.") : null;
        DateTimeOffset at = DateTimeOffset.TryParseExact(
            JsonReading.Required(json, "at"), TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out DateTimeOffset read)
            ? read
            : throw new ArgumentException("Its time is not a time.");
        FoundDraft found = new(file, Session(json.GetProperty("session")), at)
        {
            Plan = JsonReading.Part(json, "plan", part => new KeptDraft(
                PlanJsonReader.Read(part.GetProperty("plan")),
                JsonReading.Part(part, "based_on", based => new RevisionRef(JsonReading.RequiredWhole(based, "revision"), JsonReading.Required(based, "hash"))))),
            Form = JsonReading.Part(json, "form", part => new KeptForm(code, JsonReading.Required(part, "id"))
            {
                At = JsonReading.Text(part, "at"),
                Fields = JsonReading.Map(part, "fields", (_, value) => value.GetString() ?? ""),
                Further = JsonReading.Map(part, "further", (_, value) => value.GetString() ?? ""),
            }),
        };
        return found is { Plan: null, Form: null } ? throw new ArgumentException("It holds nothing.") : found;
    }

    private static DraftSession Session(JsonElement json) => new(
        JsonReading.Required(json, "account"), JsonReading.Required(json, "name"), JsonReading.Required(json, "host"), JsonReading.Required(json, "boot"),
        JsonReading.RequiredWhole(json, "process"), json.GetProperty("started").GetInt64());

    private static string Text(DraftSession session, DateTimeOffset at, CaseCode? code, (string Name, JsonObject Value) part) => JsonFields.Text(JsonFields.Of(
        ("schema", Schema),
        ("case", code?.Text),
        ("at", at.ToUniversalTime().ToString(TimeForm, CultureInfo.InvariantCulture)),
        ("session", JsonFields.Of(
            ("account", session.Account), ("name", session.Name), ("host", session.Host), ("boot", session.Boot), ("process", session.Process), ("started", session.Started))),
        part));

    private static JsonObject Texts(ImmutableSortedDictionary<string, string> texts) =>
        JsonFields.Of(texts.Select(text => KeyValuePair.Create(text.Key, (JsonNode?)text.Value)));
}
