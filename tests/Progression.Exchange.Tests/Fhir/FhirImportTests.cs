using System.Text;
using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Fhir;
using Progression.Exchange.Import;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>What comes in from a bundle, and what is refused, each by entry and field.</summary>
public sealed class FhirImportTests
{
    // Operated on 1 November 2026, left knee; the person in it is invented.
    private static readonly Case Into = InventedOrders.Cases[0] with { PreOp = null, Assessments = [], Born = null, BodyMass = null, DeficitWritten = null };

    [Theory]
    [InlineData("http://loinc.org", "41343-5", "92.5", "deg", "flexion_active", 92.5)]
    [InlineData("urn:x-progression:measure", "quadriceps_torque", "40", "[ft_i].[lbf_av]", "quadriceps_torque", 54.232718)]
    [InlineData("urn:x-progression:measure", "girth", "0.42", "m", "girth", 42)]
    [InlineData("urn:x-progression:measure", "girth", "16.5", "[in_i]", "girth", 41.91)]
    [InlineData("http://loinc.org", "64098-7", "1000", "[ft_i]", "six_minute_walk", 304.8)]
    [InlineData("urn:x-progression:measure", "timed_up_and_go", "0.2", "min", "timed_up_and_go", 12)]
    [InlineData("urn:x-progression:measure", "pain_rest", "3", "{score}", "pain_rest", 3)]
    [InlineData("urn:x-progression:measure", "pain_rest", "3", "1", "pain_rest", 3)]
    public void A_value_comes_in_in_the_unit_in_which_it_is_kept(string system, string code, string value, string unit, string measure, double kept)
    {
        ImportResult read = Read(Bundle(Observation(system, code, value, unit))).Result;

        Assert.Empty(read.Problems);
        Assert.Equal(kept, Assert.Single(read.Case!.Assessments).Value(measure));
        Assert.Equal(new DateOnly(2026, 11, 12), read.Case.Assessments[0].Date);
    }

    [Fact]
    public void A_body_weight_in_pounds_becomes_the_body_mass()
    {
        Assert.Equal(81.65, Math.Round(Read(Bundle(Observation("http://loinc.org", "29463-7", "180", "[lb_av]"))).Result.Case!.BodyMass!.Kilograms, 2));
        Assert.Contains("unit is missing, not one of UCUM", Refusal(Observation("http://loinc.org", "29463-7", "180", "lb")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("41345-0", DeficitSign.Negative, -6, 6)]
    [InlineData("41345-0", DeficitSign.Positive, 6, 6)]
    public void A_deficit_under_a_public_code_is_read_as_it_is_said_to_be_written(string code, DeficitSign sign, double sent, double kept) =>
        Assert.Equal(kept, Read(Bundle(Observation("http://loinc.org", code, sent.ToString(null, null), "deg")), sign).Result.Case!.Assessments[0].Value(MeasureIds.ExtensionActive));

    [Theory]
    [InlineData("2026-11-12T23:30:00-08:00")]
    [InlineData("2026-11-12T00:30:00+14:00")]
    [InlineData("2026-11-12T09:30:00.5Z")]
    public void The_day_is_that_of_the_place_where_it_was_measured(string moment) =>
        Assert.Equal(new DateOnly(2026, 11, 12), Read(Bundle(With(Good(), "effectiveDateTime", moment))).Result.Case!.Assessments[0].Date);

    [Theory]
    [InlineData("status", "\"preliminary\"", "entry 2, status", "Only what is final comes in.")]
    [InlineData("status", "\"entered-in-error\"", "entry 2, status", "Only what is final comes in.")]
    [InlineData("status", null, "entry 2, status", "Only what is final comes in.")]
    [InlineData("code", """{"coding":[{"system":"http://loinc.org","code":"8480-6"}]}""", "entry 2, code", "This code is not known here.")]
    [InlineData("code", """{"text":"Knee flexion"}""", "entry 2, code", "This code is not known here.")]
    [InlineData("code", """{"coding":[{"system":"http://loinc.org","code":"41347-6"}]}""", "entry 2, code", "This is of the other knee.")]
    [InlineData("code", """{"coding":[{"system":"http://loinc.org","code":"72514-3"}]}""", "entry 2, code", "does not say whether at rest")]
    [InlineData("code", """{"coding":[{"system":"http://loinc.org","code":"41345-0"}]}""", "entry 2, code", "does not say how a deficit is written")]
    [InlineData("code", """{"coding":[{"system":"http://loinc.org","code":"41343-5"},{"system":"urn:x-progression:measure","code":"girth"}]}""", "entry 2, code", "do not mean the same")]
    [InlineData("code", """{"coding":[{"system":"urn:x-progression:measure","code":"flexion"}]}""", "entry 2, code", "There is no such measure.")]
    [InlineData("effectiveDateTime", null, "entry 2, effectiveDateTime", "missing or not one day")]
    [InlineData("effectiveDateTime", "\"2026-11\"", "entry 2, effectiveDateTime", "missing or not one day")]
    [InlineData("effectiveDateTime", "\"12.11.2026\"", "entry 2, effectiveDateTime", "missing or not one day")]
    [InlineData("effectiveDateTime", "\"2026-11-26\"", "entry 2, effectiveDateTime", "The day lies in the future.")]
    [InlineData("effectiveDateTime", "\"1926-11-12\"", "entry 2, effectiveDateTime", "too early")]
    [InlineData("subject", """{"reference":"urn:uuid:0"}""", "entry 2, subject.reference", "leads to no entry")]
    [InlineData("subject", """{"reference":"Patient/77"}""", "entry 2, subject.reference", "leads to no entry")]
    [InlineData("subject", """{"reference":"urn:b"}""", "entry 2, subject.reference", "not to a person")]
    [InlineData("subject", """{"identifier":{"system":"urn:x-progression:case","value":"OTHER-9"}}""", "entry 2, subject.identifier", "This is of another person.")]
    [InlineData("subject", null, "entry 2, subject", "It is not said whose this is.")]
    [InlineData("valueQuantity", null, "entry 2, value", "There is no value with a unit here")]
    [InlineData("valueQuantity", """{"value":92,"unit":"deg"}""", "entry 2, valueQuantity.code", "The unit is missing, not one of UCUM")]
    [InlineData("valueQuantity", """{"value":92,"system":"http://unitsofmeasure.org","code":"degrees"}""", "entry 2, valueQuantity.code", "cannot be converted")]
    [InlineData("valueQuantity", """{"value":92,"system":"http://unitsofmeasure.org","code":"rad"}""", "entry 2, valueQuantity.code", "cannot be converted")]
    [InlineData("valueQuantity", """{"value":"92","system":"http://unitsofmeasure.org","code":"deg"}""", "entry 2, valueQuantity.value", "not a number")]
    [InlineData("valueQuantity", """{"value":1e400,"system":"http://unitsofmeasure.org","code":"deg"}""", "entry 2, valueQuantity.value", "not a number")]
    [InlineData("valueQuantity", """{"value":160.1,"system":"http://unitsofmeasure.org","code":"deg"}""", "entry 2, value", "out of range")]
    [InlineData("valueQuantity", """{"value":92,"comparator":">","system":"http://unitsofmeasure.org","code":"deg"}""", "entry 2, valueQuantity.comparator", "a bound, not a value")]
    [InlineData("component", """[{"code":{"text":"left"},"valueInteger":3}]""", "entry 2, component[0].code", "not known here")]
    [InlineData("component", """[{"code":{"coding":[{"system":"urn:x-progression:reading-detail","code":"trials"}]},"valueInteger":21}]""", "entry 2", "number of trials is out of range")]
    public void What_cannot_be_taken_is_refused_by_entry_and_field(string member, string? json, string at, string wrong)
    {
        ImportResult read = Read(Bundle(With(Good(), member, json is null ? null : JsonNode.Parse(json)))).Result;

        Assert.Null(read.Case);
        ImportProblem told = Assert.Single(read.Problems);
        Assert.StartsWith(at, told.Place.ToString(), StringComparison.Ordinal);
        Assert.Contains(wrong, told.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void One_refusal_keeps_everything_out()
    {
        ImportResult read = Read(Bundle(Good(), Observation("http://loinc.org", "64098-7", "300", "km"))).Result;

        Assert.Null(read.Case);
        Assert.Equal("entry 3, value", Assert.Single(read.Problems).Place.ToString());
        Assert.Equal(1, read.Coming);
    }

    [Fact]
    public void Two_values_of_one_measure_and_day_are_refused_and_the_same_one_is_taken_once()
    {
        Assert.Contains("another value for this measure and day", Refusal(Good(), With(Good(), "valueQuantity", JsonNode.Parse("""{"value":93,"system":"http://unitsofmeasure.org","code":"deg"}"""))), StringComparison.Ordinal);
        Assert.Equal([ImportFate.ComesIn, ImportFate.Repeated], Read(Bundle(Good(), Good())).Result.Lines.Select(line => line.Fate));
    }

    [Fact]
    public void A_bundle_of_another_person_is_refused()
    {
        JsonObject bundle = Bundle(Good());
        bundle["entry"]![0]!["resource"]!["identifier"]![0]!["value"] = "OTHER-9";

        Assert.All(Read(bundle).Result.Problems, problem => Assert.Equal("This is of another person.", problem.Wrong));
        Assert.Equal(["entry 1, identifier", "entry 2, subject.reference"], Read(bundle).Result.Problems.Select(problem => problem.Place.ToString()));
    }

    [Fact]
    public void A_person_without_our_code_is_asked_back_and_a_second_one_refused()
    {
        JsonObject bundle = Bundle(Good());
        bundle["entry"]![0]!["resource"]!["identifier"] = JsonNode.Parse("""[{"system":"urn:oid:1.2.3","value":"0815"}]""");

        Assert.Contains("0815", Assert.Single(Read(bundle).Result.Queries).ToString(), StringComparison.Ordinal);
        bundle["entry"]!.AsArray().Add(JsonNode.Parse("""{"fullUrl":"urn:p2","resource":{"resourceType":"Patient"}}"""));
        Assert.Contains("more than one person", Assert.Single(Read(bundle).Result.Problems).ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_date_of_birth_is_another_person()
    {
        JsonObject bundle = Bundle(Good());
        bundle["entry"]![0]!["resource"]!["birthDate"] = "1957-05-14";

        Assert.Equal(new DateOnly(1957, 5, 14), Read(bundle).Result.Case!.Born);
        Assert.Contains(Read(bundle, into: Into with { Born = new DateOnly(1957, 5, 15) }).Result.Problems, problem => problem.Place.ToString() == "entry 1, birthDate");
    }

    [Theory]
    [InlineData("""{"resourceType":"Observation"}""", "resourceType")]
    [InlineData("""{"resourceType":"Bundle","type":"document","entry":[{}]}""", "type")]
    [InlineData("""{"resourceType":"Bundle","type":"collection"}""", "entry")]
    [InlineData("""{"resourceType":"Bundle","type":"collection","entry":[]}""", "entry")]
    [InlineData("""{"resourceType":"Bundle","type":"collection","entry":[{"fullUrl":"urn:x"}]}""", "entry 1, resource")]
    [InlineData("[1]", "resourceType")]
    [InlineData("", "")]
    [InlineData("{\"resourceType\":\"Bundle\",\"type\":\"collection\",\"type\":\"batch\"}", "")]
    [InlineData("schema: assessment-file/1", "")]
    public void What_is_no_bundle_is_refused(string text, string place) =>
        Assert.Equal(place, Assert.Single(FhirImport.Of(Encoding.UTF8.GetBytes(text), Ground(Into), InventedOrders.Codes).Result.Problems).Place.ToString());

    [Theory]
    [InlineData(new byte[] { 0x7B, 0x00, 0x7D })]
    [InlineData(new byte[] { 0x7B, 0xFF, 0x7D })]
    [InlineData(new byte[] { 0xC3, 0x28 })]
    public void Bytes_that_are_no_text_are_refused(byte[] bytes) => Assert.Single(FhirImport.Of(bytes, Ground(Into), InventedOrders.Codes).Result.Problems);

    [Fact]
    public void A_mark_at_the_start_and_references_as_servers_write_them_are_read()
    {
        string text = Bundle(Good()).ToJsonString().Replace("urn:p", "https://records.example/r4/Patient/5", StringComparison.Ordinal)
            .Replace("\"reference\":\"https://records.example/r4/Patient/5\"", "\"reference\":\"Patient/5\"", StringComparison.Ordinal);

        Assert.NotNull(FhirImport.Of([0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)], Ground(Into), InventedOrders.Codes).Result.Case);
    }

    [Fact]
    public void What_is_deleted_in_a_transaction_is_refused()
    {
        JsonObject bundle = Bundle(Good());
        bundle["type"] = "transaction";
        bundle["entry"]![1]!["request"] = JsonNode.Parse("""{"method":"DELETE","url":"Observation/1"}""");

        Assert.Equal("entry 2, request.method", Assert.Single(Read(bundle).Result.Problems).Place.ToString());
    }

    [Fact]
    public void A_bundle_as_large_as_is_read_at_all_is_an_answer_too()
    {
        JsonObject[] many = [.. Enumerable.Range(0, 60_000).Select(number => With(Good(), "subject", JsonNode.Parse($$"""{"reference":"Patient/{{number}}"}""")))];
        byte[] bytes = Encoding.UTF8.GetBytes(Bundle(many).ToJsonString());

        Assert.InRange(bytes.Length, 15_000_000, ImportGround.MostBytes);
        ImportResult read = FhirImport.Of(bytes, Ground(Into), InventedOrders.Codes).Result;
        Assert.Equal(59_999, read.Problems.Length);
        Assert.Equal(102, ImportPreview.Lines(read, "LARK-03").Count(line => line.StartsWith("  ", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_is_left_aside_is_told()
    {
        FhirImport read = Read(FhirBundle.Of(InventedOrders.Drafted(InventedOrders.Full)), into: InventedOrders.Full);

        Assert.Contains("CarePlan (1)", read.Left);
        Assert.Contains(read.Left, left => left.StartsWith("Extension lag, computed here", StringComparison.Ordinal));
    }

    private static ImportGround Ground(Case into) => new(into, InventedOrders.Library, InventedOrders.Today);

    private static FhirImport Read(JsonObject bundle, DeficitSign? deficits = null, Case? into = null) =>
        FhirImport.Of(Encoding.UTF8.GetBytes(bundle.ToJsonString()), Ground(into ?? Into), InventedOrders.Codes, deficits);

    private static string Refusal(params JsonObject[] observations)
    {
        ImportResult read = Read(Bundle(observations)).Result;
        Assert.Null(read.Case);
        return Assert.Single(read.Problems).ToString();
    }

    private static JsonObject Good() => Observation("http://loinc.org", "41343-5", "92", "deg");

    private static JsonObject Observation(string system, string code, string value, string unit) => JsonNode.Parse($$$"""
        {"resourceType":"Observation","status":"final","code":{"coding":[{"system":"{{{system}}}","code":"{{{code}}}"}]},"subject":{"reference":"urn:p"},
         "effectiveDateTime":"2026-11-12","valueQuantity":{"value":{{{value}}},"system":"http://unitsofmeasure.org","code":"{{{unit}}}"}}
        """)!.AsObject();

    private static JsonObject With(JsonObject resource, string member, JsonNode? value)
    {
        resource.Remove(member);
        if (value is not null)
        {
            resource[member] = value;
        }

        return resource;
    }

    private static JsonObject Bundle(params JsonObject[] observations) => new()
    {
        ["resourceType"] = "Bundle",
        ["type"] = "searchset",
        ["entry"] = new JsonArray(
        [
            JsonNode.Parse($$$"""{"fullUrl":"urn:p","resource":{"resourceType":"Patient","id":"5","identifier":[{"system":"urn:x-progression:case","value":"{{{Into.Code}}}"}]}}"""),
            .. observations.Select((one, number) => (JsonNode)new JsonObject { ["fullUrl"] = number == 0 ? "urn:b" : $"urn:b{number}", ["resource"] = one }),
        ]),
    };
}
