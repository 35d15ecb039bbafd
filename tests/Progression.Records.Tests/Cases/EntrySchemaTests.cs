using System.Text.Json.Nodes;
using NJsonSchema;

namespace Progression.Records.Tests.Cases;

/// <summary>The documented schemas of assessment, session and clinic files, with their examples; the judge is an independent validator.</summary>
public sealed class EntrySchemaTests
{
    [Theory]
    [InlineData("assessment")]
    [InlineData("session")]
    [InlineData("clinic")]
    public async Task The_example_keeps_to_its_schema_and_shows_every_field_of_it(string name)
    {
        string example = Text($"{name}.yaml");

        Assert.Empty(await Errors(name, example));
        Assert.All(Fields(JsonNode.Parse(Text($"{name}.schema.json"))!), field => Assert.Contains(field.Key + ":", example, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("assessment")]
    [InlineData("session")]
    [InlineData("clinic")]
    public void Every_field_is_described(string name) => Assert.All(
        Fields(JsonNode.Parse(Text($"{name}.schema.json"))!), field => Assert.False(string.IsNullOrEmpty(field.Value!["description"]?.GetValue<string>()), field.Key));

    [Theory]
    [InlineData("assessment", "side: left", "side: both")]
    [InlineData("assessment", "deficit_sign: positive", "deficit_sign: 5")]
    [InlineData("assessment", "    by: KL\n", "")]
    [InlineData("assessment", "correct:", "corrected:")]
    [InlineData("session", "pain_before: 3", "pain_before: 11")]
    [InlineData("session", "session: 1", "session: 0")]
    [InlineData("session", "session-file/1", "assessment-file/1")]
    [InlineData("clinic", "accounts: own", "accounts: both")]
    [InlineData("clinic", "  therapist:", "  keeper:")]
    [InlineData("clinic", "- clinic-leads", "- -x")]
    public async Task The_validator_refuses_what_is_not_documented(string name, string piece, string by)
    {
        string example = Text($"{name}.yaml");

        Assert.Contains(piece, example, StringComparison.Ordinal);
        Assert.NotEmpty(await Errors(name, example.Replace(piece, by, StringComparison.Ordinal)));
    }

    private static async Task<string[]> Errors(string name, string yaml)
    {
        // The parts are put into the schema, because a test reads no other documents; the validator knows "$defs" by its name in older drafts.
        JsonObject whole = JsonNode.Parse(Text($"{name}.schema.json"))!.AsObject();
        whole["$defs"] ??= JsonNode.Parse(Text("case.schema.json"))!["$defs"]!.DeepClone();
        string text = whole.ToJsonString().Replace("case.schema.json#", "#", StringComparison.Ordinal).Replace("$defs", "definitions", StringComparison.Ordinal);
        JsonSchema schema = await JsonSchema.FromJsonAsync(text, TestContext.Current.CancellationToken);
        return [.. schema.Validate(YamlAsJson.Of(yaml)).Select(error => error.ToString())];
    }

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Fields(JsonNode node) => node switch
    {
        JsonObject map => map.SelectMany(pair => (pair.Key == "properties" ? pair.Value!.AsObject() : []).Concat(pair.Value is null ? [] : Fields(pair.Value))),
        JsonArray list => list.SelectMany(item => item is null ? [] : Fields(item)),
        _ => [],
    };

    private static string Text(string file) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, file));
}
