using System.Text.Json.Nodes;
using NJsonSchema;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Tests.Commands.Plans;

/// <summary>The JSON answers keep to their documented schemas; the judge is an independent validator.</summary>
public sealed class AnswerSchemaTests : IDisposable
{
    private const string Dose = "dose --on 15s --off 45s --ramp-up 3s --ramp-down 0s --ramps inside --contractions 15 --count-last-rest yes --per-day 2 --days 7 --weeks 6 --pps 50 --width 250us --width-is phase --waveform symmetric --peak 60mA --pad 7.6x12.7cm --evoked 24Nm --max-voluntary 80Nm --json";

    private readonly PlanBench _bench = new();

    public void Dispose() => _bench.Dispose();

    public static TheoryData<string, string> Lines => new()
    {
        { "draft", "draft FILE --json" },
        { "draft", "draft FILE --json --weeks 26 --regimen strong-45-minutes" },
        { "findings", "check FILE --json" },
        { "why", "why FILE --week 3 --lane stim --json" },
        { "why", "why FILE --week 2 --lane flexion --json" },
        { "why", "why FILE --week 2 --lane pairing --json" },
        { "why", "why FILE --week 2 --lane load --json" },
        { "compare", "compare FILE --json" },
        { "forecast", "forecast FILE --measure knee-flexion --json" },
        { "forecast", "forecast FILE --measure lag --json" },
        { "forecast", "forecast FILE --measure strength --json" },
        { "dose", Dose },
        { "dose", "dose --on 15s --json" },
        { "dose", "dose --pps 100 --width 500us --width-is phase --waveform symmetric --peak 1000mA --pad 5x5cm --json" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public async Task Every_answer_keeps_to_its_schema(string schema, string line)
    {
        foreach (string text in new[] { PlanBench.Example, PlanBench.Short })
        {
            string file = _bench.File(text);

            Assert.Empty(await Errors(schema, _bench.Run(line.Replace("FILE", file, StringComparison.Ordinal).Split(' ')).Data));
        }
    }

    [Fact]
    public async Task A_plan_with_pins_and_severe_findings_keeps_to_its_schema()
    {
        string file = _bench.File(PlanBench.Example);
        _bench.Run("draft", file, "--save");
        OpenedCase saved = _bench.Saved("EXAMPLE-07")!;
        PlanRevision bare = saved.Plan!.Lanes.Where(lane => lane.Band is Band.Active or Band.Milestones)
            .Aggregate(saved.Plan, (plan, lane) => PlanEdit.Set(plan, new CellAddress(lane.Id, 3), null, lane.Id == "bend" ? "trial" : null));
        _bench.Book.Save(bare, saved.PlanStamp!.Reference);

        string check = _bench.Run("check", "EXAMPLE-07", "--json").Data;

        Assert.Empty(await Errors("findings", check));
        Assert.Contains(JsonNode.Parse(check)!["findings"]!.AsArray(), finding => finding!["cure"]?["changes"]!.AsArray().Count > 0);
        Assert.Empty(await Errors("draft", _bench.Run("draft", file, "--save", "--json").Data));
    }

    [Fact]
    public async Task A_summary_keeps_to_its_schema_with_figures_and_without()
    {
        string demo = Path.Combine(Path.GetDirectoryName(_bench.Store)!, "demo");
        Assert.Equal(0, _bench.Run("demo", "--store", demo).Code);
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        Assert.Empty(await Errors("summary", _bench.Run("summary", "--store", demo, "--by", "regimen", "--json").Data));
        Assert.Empty(await Errors("summary", _bench.Run("summary", "--json").Data));
    }

    [Fact]
    public async Task A_comparison_with_changes_keeps_to_its_schema()
    {
        string two = PlanBench.Short.Replace("sessions:", """
              - date: 2026-03-07
                readings:
                  flexion_active: 80 deg
                  extension_active: 12 deg
                  extension_passive: 8 deg
            sessions:
            """, StringComparison.Ordinal);
        string answer = _bench.Run("compare", _bench.File(two), "--json").Data;

        Assert.Contains("\"class\": \"improved\"", answer, StringComparison.Ordinal);
        Assert.Empty(await Errors("compare", answer));
        Assert.NotEmpty(await Errors("compare", answer.Replace("\"class\": \"improved\"", "\"class\": \"unchanged\"", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("--accept all")]
    [InlineData("--accept none --reason sore")]
    [InlineData("--weeks 9")]
    public async Task A_reassessment_keeps_to_its_schema(string options)
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        string visit = _bench.File(Reassess.ReassessCommandTests.Visit + "  infection_signs: yes\n", "visit.yaml");
        string[] line = ["reassess", "EXAMPLE-07", "--from", visit, "--json", .. options.Split(' ', StringSplitOptions.RemoveEmptyEntries)];

        string answer = _bench.Run(line).Data;

        Assert.Empty(await Errors("reassess", answer));
        Assert.NotEmpty(await Errors("reassess", answer.Replace("\"pinned\": false", "\"pinned\": 0", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_list_keeps_to_its_schema()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        _bench.Run("draft", _bench.File(PlanBench.Short), "--save");

        string answer = _bench.Run("list", "--json").Data;

        Assert.Contains("\"blocked\"", answer, StringComparison.Ordinal);
        Assert.Empty(await Errors("list", answer));
        Assert.NotEmpty(await Errors("list", answer.Replace("\"unsigned\"", "\"signed\"", StringComparison.Ordinal)));
        Assert.NotEmpty(await Errors("list", answer.Replace("\"total\": 2", "\"total\": null", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task An_answer_on_the_records_keeps_to_its_schema()
    {
        _bench.Run("draft", _bench.File(PlanBench.Example), "--save");
        string copy = _bench.File("x") + ".copy";

        foreach (string[] words in new string[][] { ["status"], ["verify"], ["rebuild"], ["repair"], ["backup", copy], ["restore", copy], ["export", copy + ".lines"], ["import", copy] })
        {
            string answer = _bench.Run(["records", .. words, "--json"]).Data;

            Assert.Empty(await Errors("records", answer));
            Assert.NotEmpty(await Errors("records", answer.Replace($"\"did\": \"{words[0]}\"", "\"did\": \"nothing\"", StringComparison.Ordinal)));
        }
    }

    // Else a schema that allows anything would pass, too.
    [Theory]
    [InlineData("draft", "\"caution\"", "\"warning\"")]
    [InlineData("draft", "\"schema\": \"plan/1\"", "\"schema\": \"plan/2\"")]
    [InlineData("draft", "\"rung\": \"high volume\"", "\"rung\": \"higher volume\"")]
    [InlineData("draft", "\"planned_days\": 7", "\"planned_days\": 8")]
    [InlineData("draft", "\"kind\": \"target\"", "\"kind\": \"goal\"")]
    [InlineData("findings", "\"severity\": \"note\"", "\"severity\": \"grave\"")]
    [InlineData("findings", "\"cells\"", "\"cell\"")]
    [InlineData("why", "\"would_change\": \"", "\"would_change\": 7, \"x\": \"")]
    [InlineData("compare", "\"pre_op\": true", "\"pre_op\": 1")]
    [InlineData("compare", "\"last\": null", "\"last\": 3")]
    [InlineData("forecast", "\"basis\": \"population\"", "\"basis\": \"people\"")]
    [InlineData("forecast", "\"median\"", "\"middle\"")]
    [InlineData("forecast", "\"chance_true\": 0", "\"chance_true\": 1")]
    [InlineData("dose", "\"cycle_s\": 60", "\"cycle_s\": \"60\"")]
    public async Task The_schema_refuses_what_is_not_documented(string schema, string piece, string by)
    {
        string line = schema switch
        {
            "draft" => "draft FILE --json",
            "findings" => "check FILE --json",
            "why" => "why FILE --week 3 --lane stim --json",
            "compare" => "compare FILE --json",
            "forecast" => "forecast FILE --measure knee-flexion --json",
            _ => Dose,
        };
        string good = _bench.Run(line.Replace("FILE", _bench.File(PlanBench.Example), StringComparison.Ordinal).Split(' ')).Data;

        Assert.Contains(piece, good, StringComparison.Ordinal);
        Assert.NotEmpty(await Errors(schema, good.Replace(piece, by, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("list")]
    [InlineData("records")]
    [InlineData("reviews")]
    [InlineData("review-of")]
    [InlineData("plan-parts")]
    [InlineData("draft")]
    [InlineData("findings")]
    [InlineData("why")]
    [InlineData("compare")]
    [InlineData("forecast")]
    [InlineData("reassess")]
    [InlineData("dose")]
    [InlineData("summary")]
    public void Every_field_of_a_schema_is_described(string schema) =>
        Assert.All(Fields(JsonNode.Parse(Text(schema))!), field => Assert.False(string.IsNullOrEmpty(field.Value!["description"]?.GetValue<string>()), field.Key));

    private static IEnumerable<KeyValuePair<string, JsonNode?>> Fields(JsonNode node) => node switch
    {
        JsonObject map => map.SelectMany(pair => (pair.Key == "properties" ? pair.Value!.AsObject() : []).Concat(pair.Value is null ? [] : Fields(pair.Value))),
        JsonArray list => list.SelectMany(item => item is null ? [] : Fields(item)),
        _ => [],
    };

    private static string Text(string schema) => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, $"{schema}.schema.json"));

    private static async Task<string[]> Errors(string schema, string json)
    {
        // The parts are put into the schema, because a test reads no other documents; the validator knows "$defs" by its name in older drafts.
        JsonObject whole = JsonNode.Parse(Text(schema))!.AsObject();
        JsonObject parts = JsonNode.Parse(Text("plan-parts"))!["$defs"]!.DeepClone().AsObject();
        foreach ((string name, JsonNode? part) in whole["$defs"]?.AsObject() ?? [])
        {
            parts[name] = part?.DeepClone();
        }

        whole["$defs"] = parts;
        string text = whole.ToJsonString().Replace("plan-parts.schema.json#", "#", StringComparison.Ordinal).Replace("$defs", "definitions", StringComparison.Ordinal);
        JsonSchema read = await JsonSchema.FromJsonAsync(text, TestContext.Current.CancellationToken);
        return [.. read.Validate(json).Select(error => error.ToString())];
    }
}
