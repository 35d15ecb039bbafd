using System.Text.Json.Nodes;
using Progression.Core.Reviews;
using Progression.Exchange.Fhir;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>
/// Faults planted into a good bundle, and who finds them: the first validator (F), the standard's schema and rules (S), our check of references (R), our check
/// of units (U). What one misses another finds; a letter that is missing here is a fault that check is known to miss.
/// </summary>
public sealed class FhirFaultTests
{
    public static TheoryData<string, string> Faults => new()
    {
        { "observation without code", "FS" },
        { "status that is none", "FS" },
        { "goal with a bound and no measure", "FS" },
        { "reference that leads nowhere", "R" },
        { "unit that is none of UCUM", "U" },
        { "unit code without its system", "FS" },
        { "member that is not of the standard", "FS" },
        { "one name for two entries", "FR" },
        { "provenance of nothing", "FS" },
        { "order detail without a code", "FS" },
        { "duration without its unit", "FS" },
        { "day that is none", "FS" },
        { "truth as a word", "F" },
        { "number as a word", "F" },
        { "value beside the reason why there is none", "FS" },
        { "lower end over the upper end", "FS" },
        { "empty text", "FS" },
        { "task changed before it was made", "FS" },
        { "plan without a person", "FS" },
        { "two values of one observation", "FS" },
        { "plan of a goal instead of a person", "F" },
        { "entry without a name", "FR" },
    };

    [Theory]
    [MemberData(nameof(Faults))]
    public void A_planted_fault_is_found(string fault, string by)
    {
        JsonObject bundle = Good();
        Plant(fault, bundle);

        Assert.Equal(by, Finders(bundle));
    }

    /// <summary>What the second validator leaves to others: rules with loops or lists of values, newer than .NET's XPath. None of them is about what a bundle of ours has.</summary>
    [Fact]
    public void The_rules_that_are_not_asked_are_known()
    {
        Assert.Equal(["bdl-7", "dom-3", "obs-7", "txt-1"], SpecificationOracle.Unasked.Order());
        Assert.True(SpecificationOracle.RuleCount.Asked > 400, SpecificationOracle.RuleCount.ToString());
    }

    [Fact]
    public void Nobody_finds_a_fault_where_there_is_none() => Assert.Equal("", Finders(Good()));

    private static JsonObject Good() => FhirBundle.Of(InventedOrders.Reviewed(
        InventedOrders.Full with { PreOp = null, Assessments = InventedOrders.Full.Assessments[^1..] }, ReviewStep.Requested, ReviewStep.Signed));

    private static string Finders(JsonObject bundle) => string.Concat(
        new (string Letter, Func<JsonObject, IEnumerable<string>> Check)[] { ("F", FirelyOracle.Errors), ("S", SpecificationOracle.Errors), ("R", BundleChecks.Loose), ("U", BundleChecks.WrongUnits) }
            .Where(one => one.Check(bundle).Any()).Select(one => one.Letter));

    private static void Plant(string fault, JsonObject bundle)
    {
        JsonObject First(string type) => bundle["entry"]!.AsArray().Select(entry => entry!["resource"]!.AsObject()).First(resource => resource["resourceType"]!.GetValue<string>() == type);
        JsonObject Measured() => bundle["entry"]!.AsArray().Select(entry => entry!["resource"]!.AsObject()).First(resource => resource.ContainsKey("valueQuantity"));
        JsonObject Target() => bundle["entry"]!.AsArray().Select(entry => entry!["resource"]!.AsObject()).First(resource => resource["target"] is JsonArray && resource["target"]![0]!["detailRange"] is not null)["target"]![0]!.AsObject();
        switch (fault)
        {
            case "observation without code": First("Observation").Remove("code"); break;
            case "status that is none": First("Observation")["status"] = "finished"; break;
            case "goal with a bound and no measure": Target().Remove("measure"); break;
            case "reference that leads nowhere": First("Observation")["subject"]!["reference"] = "urn:uuid:00000000-0000-4000-8000-000000000000"; break;
            case "unit that is none of UCUM": Measured()["valueQuantity"]!["code"] = "degrees"; break;
            case "unit code without its system": Measured()["valueQuantity"]!.AsObject().Remove("system"); break;
            case "member that is not of the standard": First("Patient")["nickname"] = "x"; break;
            case "one name for two entries": bundle["entry"]![1]!["fullUrl"] = bundle["entry"]![0]!["fullUrl"]!.DeepClone(); break;
            case "provenance of nothing": First("Provenance").Remove("target"); break;
            case "order detail without a code": First("ServiceRequest").Remove("code"); break;
            case "duration without its unit": First("ServiceRequest")["occurrenceTiming"]!["repeat"]!["duration"] = 20; break;
            case "day that is none": First("Observation")["effectiveDateTime"] = "2026-13-01"; break;
            case "truth as a word": Replace(bundle, "valueBoolean", "true"); break;
            case "number as a word": Measured()["valueQuantity"]!["value"] = "92"; break;
            case "value beside the reason why there is none": Measured()["dataAbsentReason"] = new JsonObject { ["text"] = "not known" }; break;
            case "lower end over the upper end": Target()["detailRange"] = JsonNode.Parse("""{"low":{"value":9,"system":"http://unitsofmeasure.org","code":"deg"},"high":{"value":5,"system":"http://unitsofmeasure.org","code":"deg"}}"""); break;
            case "empty text": First("Procedure")["code"]!["text"] = ""; break;
            case "task changed before it was made": First("Task")["authoredOn"] = "2036-01-01T00:00:00Z"; break;
            case "plan without a person": First("CarePlan").Remove("subject"); break;
            case "two values of one observation": Measured()["valueInteger"] = 5; break;
            case "plan of a goal instead of a person": First("CarePlan")["subject"]!["reference"] = First("CarePlan")["goal"]![0]!["reference"]!.DeepClone(); break;
            case "entry without a name": bundle["entry"]!.AsArray()[^1]!.AsObject().Remove("fullUrl"); break;
            default: throw new ArgumentOutOfRangeException(nameof(fault), fault, "No such fault.");
        }
    }

    private static void Replace(JsonObject bundle, string member, JsonNode value) => BundleChecks.Objects(bundle).First(part => part.ContainsKey(member))[member] = value;
}
