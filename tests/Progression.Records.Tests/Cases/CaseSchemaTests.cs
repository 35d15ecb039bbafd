using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using NJsonSchema;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

/// <summary>The documented schema and the reader agree; the schema's own judge is an independent validator.</summary>
public sealed class CaseSchemaTests
{
    private static readonly string Schema = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "case.schema.json"));
    private static readonly string Example = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "case.yaml"));

    private static async Task<string[]> Errors(string yaml)
    {
        // The validator knows "$defs" by its name in older drafts; nothing else of the schema differs there.
        JsonSchema schema = await JsonSchema.FromJsonAsync(Schema.Replace("$defs", "definitions", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        return [.. schema.Validate(YamlAsJson.Of(yaml)).Select(error => error.ToString())];
    }

    [Fact]
    public async Task The_example_and_the_good_text_are_valid()
    {
        Assert.Empty(await Errors(Example));
        Assert.Empty(await Errors(CaseText.Good));
    }

    [Fact]
    public async Task What_the_writer_writes_is_valid()
    {
        foreach (Core.People.Case written in InventedCases.Some(seed: 11, count: 20))
        {
            Assert.Empty(await Errors(Records.Cases.CaseFileWriter.Write(written, SmallLibrary.Value)));
        }
    }

    [Theory]
    [InlineData("82 kg", "82")]
    [InlineData("side: left", "side: both")]
    [InlineData("weeks: 6", "weeks: 0")]
    [InlineData("weeks: 6", "week: 6")]
    [InlineData("contractions: 10", "contractions: -10")]
    [InlineData("peak: 38 mA", "peak: 38")]
    [InlineData("62 deg", "{value: 62 deg, trial: 3}")]
    [InlineData("clot_signs: no", "clot_signs: maybe")]
    [InlineData("62 deg", "{trials: 3}")]
    [InlineData("62 deg", "{each: []}")]
    [InlineData("62 deg", "{value: 62 deg, corrected: [{was: 26 deg, on: 2026-03-06}]}")]
    [InlineData("peak: 38 mA", "comfort: 11")]
    [InlineData("peak: 38 mA", "skin: burnt")]
    [InlineData("peak: 38 mA", "exercises: [{exercise: quad-set, sets: [10 x 5 kg]}]")]
    [InlineData("code: AB-12", "code: Mary Poppins")]
    [InlineData("date: 2026-03-02", "date: 2 March")]
    public async Task The_validator_refuses_what_the_reader_refuses(string piece, string by)
    {
        string spoilt = CaseText.Good.Replace(piece, by, StringComparison.Ordinal);

        Assert.NotEqual(CaseText.Good, spoilt);
        Assert.NotEmpty(await Errors(spoilt));
        Assert.NotEmpty(CaseText.Read(spoilt).Problems);
    }

    // Each map of a file holds one unknown field; the refusal lists the fields the reader knows there.
    [Fact]
    public void The_schema_lists_exactly_the_fields_the_reader_knows()
    {
        const string text = """
            x: 1
            operation: {x: 1}
            surgeon: {x: 1}
            plan: {x: 1}
            screening: {x: 1, answers: {infection: {x: 1}, active-implant: {answer: yes, clearance: {x: 1}}}}
            pre_op: {x: 1, readings: {flexion_active: {x: 1, corrected: [{x: 1}]}}, signs: {x: 1}, corrected: [{x: 1}]}
            sessions: [{x: 1, exercises: [{x: 1}]}]
            flag_notes: [{x: 1}]
            """;
        Dictionary<string, string> places = new()
        {
            ["x"] = "properties",
            ["operation.x"] = "properties/operation/properties",
            ["surgeon.x"] = "properties/surgeon/properties",
            ["plan.x"] = "properties/plan/properties",
            ["screening.x"] = "properties/screening/properties",
            ["screening.answers.infection.x"] = "$defs/clearedAnswer/properties",
            ["screening.answers.active-implant.clearance.x"] = "$defs/clearedAnswer/properties/clearance/properties",
            ["pre_op.x"] = "$defs/assessment/properties",
            ["pre_op.readings.flexion_active.x"] = "$defs/reading/properties",
            ["pre_op.readings.flexion_active.corrected[1].x"] = "$defs/correction/properties",
            ["pre_op.corrected[1].x"] = "$defs/visitCorrection/properties",
            ["pre_op.signs.x"] = "$defs/assessment/properties/signs/properties",
            ["sessions[1].x"] = "$defs/session/properties",
            ["sessions[1].exercises[1].x"] = "$defs/exerciseDone/properties",
            ["flag_notes[1].x"] = "$defs/flagNote/properties",
        };

        Dictionary<string, string> known = CaseText.Read(text).Problems
            .Where(problem => problem.Found == "x").ToDictionary(problem => problem.Field, problem => problem.Allowed);

        Assert.Equal(places.Keys.Order(), known.Keys.Order());
        Assert.All(places, place => Assert.Equal(Names(place.Value), known[place.Key].Split(", ").Order()));
        Assert.Equal(places.Values.Order(), Maps(JsonNode.Parse(Schema)!, "").Order());
    }

    [Fact]
    public void Every_field_of_the_schema_stands_in_the_example()
    {
        string[] keys = [.. Keys(YamlDocument.Read("case.yaml", Encoding.UTF8.GetBytes(Example)).Root!)];

        Assert.All(Maps(JsonNode.Parse(Schema)!, "").SelectMany(Names), name => Assert.Contains(name, keys));
    }

    [Fact]
    public void Every_field_of_the_schema_is_described()
    {
        JsonNode schema = JsonNode.Parse(Schema)!;

        Assert.All(
            Maps(schema, "").SelectMany(map => At(schema, map).AsObject()),
            field => Assert.True(field.Value!["description"] is not null || field.Value["$ref"] is not null, field.Key));
    }

    private static string[] Names(string map) => [.. At(JsonNode.Parse(Schema)!, map).AsObject().Select(field => field.Key).Order()];

    private static JsonNode At(JsonNode schema, string path) => path.Split('/').Aggregate(schema, (node, step) => node[step]!);

    private static IEnumerable<string> Maps(JsonNode node, string path) => node is not JsonObject map ? [] : map.SelectMany(field =>
    {
        string here = path.Length == 0 ? field.Key : $"{path}/{field.Key}";
        bool isMap = field.Key == "properties" && field.Value!.GetValueKind() == JsonValueKind.Object;
        return Maps(field.Value!, here).Concat(isMap ? [here] : []);
    });

    private static IEnumerable<string> Keys(YamlNode node) => node switch
    {
        YamlMap map => map.Entries.SelectMany(entry => Keys(entry.Value).Append(entry.Key.Text)),
        YamlList list => list.Items.SelectMany(Keys),
        _ => [],
    };
}
