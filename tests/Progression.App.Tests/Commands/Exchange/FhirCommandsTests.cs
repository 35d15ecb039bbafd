using System.Text.Json.Nodes;
using Progression.App.Commands;
using Progression.App.Tests.Commands.Plans;
using Progression.Records.Audit;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Tests.Commands.Exchange;

/// <summary>FHIR bundles out and in by command.</summary>
public sealed class FhirCommandsTests : IDisposable
{
    private readonly PlanBench _bench = new();

    public FhirCommandsTests() => _bench.Run("draft", _bench.File(PlanBench.Example), "--save");

    public void Dispose() => _bench.Dispose();

    [Fact]
    public void A_saved_case_leaves_as_a_bundle_with_who_made_the_plan_and_that_is_written_down()
    {
        CommandRun run = _bench.Run("export", "fhir", "EXAMPLE-07");

        Assert.Equal(ExitCode.Good, run.Code);
        JsonNode bundle = JsonNode.Parse(run.Data)!;
        Assert.Equal("EXAMPLE-07", Resource(bundle, "Patient")["identifier"]![0]!["value"]!.GetValue<string>());
        Assert.Equal("EXAMPLE-07/1", Resource(bundle, "CarePlan")["identifier"]![0]!["value"]!.GetValue<string>());
        Assert.Equal(_bench.Saved("EXAMPLE-07")!.PlanStamp!.Hash, Resource(bundle, "Provenance")["entity"]![0]!["what"]!["identifier"]!["value"]!.GetValue<string>());
        Assert.DoesNotContain("1957", run.Data, StringComparison.Ordinal);
        Assert.Equal(["fhir bundle"], Written(AuditAct.Exported));
    }

    [Fact]
    public void A_date_of_birth_goes_along_only_when_it_is_asked_for_and_that_is_written_down()
    {
        Assert.Contains("\"birthDate\": \"1957-05-14\"", _bench.Run("export", "fhir", "EXAMPLE-07", "--with-birth-date").Data, StringComparison.Ordinal);
        Assert.Equal(["fhir bundle with date of birth"], Written(AuditAct.Exported));
        Assert.Contains("There is no name on standard input", _bench.Run("export", "fhir", "EXAMPLE-07", "--with-name").Messages, StringComparison.Ordinal);
        Assert.Contains("\"text\": \"Invented Person\"", _bench.RunWith(new StringReader("Invented Person\n"), "export", "fhir", "EXAMPLE-07", "--with-name").Data, StringComparison.Ordinal);
        Assert.Equal(["fhir bundle with date of birth", "fhir bundle with name"], Written(AuditAct.Exported));
    }

    [Fact]
    public void A_file_is_not_written_over()
    {
        string file = _bench.File("{}", "there.json");

        Assert.Equal(ExitCode.CannotCreate, _bench.Run("export", "fhir", "EXAMPLE-07", "--out", file).Code);
        Assert.Equal("{}", File.ReadAllText(file));
        Assert.Equal(ExitCode.Good, _bench.Run("export", "fhir", "EXAMPLE-07", "--out", file, "--force").Code);
        Assert.StartsWith("{\n  \"resourceType\": \"Bundle\"", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void What_left_is_already_there_when_it_comes_back()
    {
        string file = _bench.File(_bench.Run("export", "fhir", "EXAMPLE-07").Data, "back.json");

        CommandRun run = _bench.Run("import", "fhir", file, "--case", "EXAMPLE-07", "--yes");

        Assert.Equal(ExitCode.Good, run.Code);
        Assert.StartsWith("EXAMPLE-07: nothing that the case has not already.", run.Data, StringComparison.Ordinal);
        Assert.Contains("left aside: CarePlan (1), Goal (", run.Messages, StringComparison.Ordinal);
        Assert.Contains(", Extension lag, computed here (2).", run.Messages, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
    }

    [Fact]
    public void The_preview_changes_nothing_and_yes_imports_all_of_it()
    {
        string file = _bench.File(Bundle("EXAMPLE-07", "2026-03-07", 64.5), "visit.json");

        CommandRun preview = _bench.Run("import", "fhir", file, "--case", "EXAMPLE-07");
        Assert.Equal((ExitCode.Good, "progression import fhir: nothing was changed; --yes imports it.\n"), (preview.Code, preview.Messages));
        Assert.Equal("EXAMPLE-07: 1 would come in.\nWould come in, 2026-03-07, week 1:\n  entry 2  Active flexion  64.5 deg\n", preview.Data);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);

        CommandRun done = _bench.Run("import", "fhir", file, "--case", "EXAMPLE-07", "--yes");
        Assert.Equal(ExitCode.Good, done.Code);
        Assert.Equal(64.5, _bench.Saved("EXAMPLE-07")!.Case.Assessments[^1].Value("flexion_active"));
        Assert.Equal(["fhir: 1"], Written(AuditAct.Imported));
    }

    [Fact]
    public void A_refusal_names_entry_and_field_and_keeps_everything_out()
    {
        CommandRun run = _bench.Run("import", "fhir", _bench.File(Bundle("OTHER-01", "2026-03-07", 64.5), "other.json"), "--case", "EXAMPLE-07", "--yes");

        Assert.Equal(ExitCode.BadData, run.Code);
        Assert.Contains("  entry 1, identifier: This is of another person. Allowed: the code EXAMPLE-07. Found: \"OTHER-01\".", run.Data, StringComparison.Ordinal);
        Assert.Equal(1, _bench.Saved("EXAMPLE-07")!.CaseStamp.Revision);
        Assert.Equal(ExitCode.BadData, _bench.Run("import", "fhir", _bench.File("schema: assessment-file/1\n"), "--case", "EXAMPLE-07", "--yes").Code);
    }

    [Fact]
    public void A_clinics_own_codes_are_read_and_a_wrong_table_is_refused_by_line()
    {
        const string own = """
            schema: standard-codes/1
            systems:
              clinic:
                uri: https://clinic.example/codes
            codes:
              - system: clinic
                code: K-90
                meaning: Active flexion
                measures: [flexion_active]
                side: both
                use: in and out
                source: "The clinic's own list"
                standing: common practice

            """;
        string codes = _bench.File(own, "codes.yaml");
        string bundle = _bench.File(Bundle("EXAMPLE-07", "2026-03-07", 64.5).Replace("urn:x-progression:measure", "https://clinic.example/codes", StringComparison.Ordinal).Replace("\"flexion_active\"", "\"K-90\"", StringComparison.Ordinal), "own.json");

        Assert.Equal(ExitCode.BadData, _bench.Run("import", "fhir", bundle, "--case", "EXAMPLE-07").Code);
        Assert.Contains("Active flexion  64.5 deg", _bench.Run("import", "fhir", bundle, "--case", "EXAMPLE-07", "--codes", codes).Data, StringComparison.Ordinal);
        Assert.Contains("https://clinic.example/codes", _bench.Run("export", "fhir", "EXAMPLE-07", "--codes", codes).Data, StringComparison.Ordinal);
        CommandRun wrong = _bench.Run("export", "fhir", "EXAMPLE-07", "--codes", _bench.File(own.Replace("side: both", "side: upper", StringComparison.Ordinal), "wrong.yaml"));
        Assert.Equal(ExitCode.Usage, wrong.Code);
        Assert.Contains("--codes, line 10, codes[1].side", wrong.Messages, StringComparison.Ordinal);
    }

    private static JsonNode Resource(JsonNode bundle, string type) =>
        bundle["entry"]!.AsArray().Select(entry => entry!["resource"]!).First(resource => resource["resourceType"]!.GetValue<string>() == type);

    private static string Bundle(string code, string day, double flexion) => FormattableString.Invariant($$$$"""
        {"resourceType":"Bundle","type":"collection","entry":[
        {"fullUrl":"urn:uuid:7d1e6b3a-97a2-4d3f-8d0a-1f0f6f6b0001","resource":{"resourceType":"Patient","identifier":[{"system":"urn:x-progression:case","value":"{{{{code}}}}"}]}},
        {"fullUrl":"urn:uuid:7d1e6b3a-97a2-4d3f-8d0a-1f0f6f6b0002","resource":{"resourceType":"Observation","status":"final",
        "code":{"coding":[{"system":"urn:x-progression:measure","code":"flexion_active"}]},"subject":{"reference":"urn:uuid:7d1e6b3a-97a2-4d3f-8d0a-1f0f6f6b0001"},
        "effectiveDateTime":"{{{{day}}}}","valueQuantity":{"value":{{{{flexion}}}},"system":"http://unitsofmeasure.org","code":"deg"}}}]}
        """);

    private IEnumerable<string> Written(AuditAct act)
    {
        LiteDbPlanStore store = new(new StoreOptions(_bench.Store, CaseSummary.Of));
        return [.. store.History(AuditChain.Code, RecordKind.Audit).Select(stamp => AuditNoteJson.Read(store.Read(AuditChain.Code, RecordKind.Audit, stamp.Revision)!.Body))
            .Where(note => note.Act == act).Select(note => note.What)];
    }
}
