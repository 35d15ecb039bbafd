using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Exchange.Fhir;

namespace Progression.Exchange.Tests.Fhir;

public sealed class FhirBundleTests
{
    private static readonly string[] OfTheCase = ["Patient", "Procedure", "Observation"];
    private static readonly string[] OfThePlan = ["CarePlan", "Goal", "ServiceRequest"];

    [Fact]
    public void Every_bundle_is_good_to_the_first_validator() => Assert.Empty(Wrong(FirelyOracle.Errors));

    [Fact]
    public void Every_bundle_is_good_to_the_schema_and_the_rules_of_the_standard() => Assert.Empty(Wrong(SpecificationOracle.Errors));

    [Fact]
    public void Every_reference_leads_to_an_entry_and_every_name_is_there_once() => Assert.Empty(Wrong(BundleChecks.Loose));

    [Fact]
    public void Every_unit_is_one_of_UCUM() => Assert.Empty(Wrong(BundleChecks.WrongUnits));

    [Fact]
    public void The_parser_writes_the_same_bundle_again() =>
        Assert.All(InventedOrders.All.Select(FhirBundle.Of), bundle => Assert.True(JsonNode.DeepEquals(bundle, FirelyOracle.Again(bundle))));

    [Fact]
    public void The_person_is_a_code_and_nothing_else_unless_it_is_asked_for()
    {
        FhirOrder order = InventedOrders.Saved(InventedOrders.Full);

        Assert.Equal("""{"resourceType":"Patient","identifier":[{"system":"urn:x-progression:case","value":"LARK-03"}]}""", All(order, "Patient").Single().ToJsonString());
        Assert.Equal(
            """{"resourceType":"Patient","identifier":[{"system":"urn:x-progression:case","value":"LARK-03"}],"name":[{"text":"Invented Person"}],"birthDate":"1957-05-14"}""",
            All(order with { Name = "Invented Person", WithBirthDate = true }, "Patient").Single().ToJsonString());
    }

    [Fact]
    public void The_same_order_gives_the_same_bundle_and_a_new_revision_new_names_for_the_plan_alone()
    {
        string[] Names(FhirOrder order, string type) =>
            [.. FhirBundle.Of(order)["entry"]!.AsArray().Where(entry => entry!["resource"]!["resourceType"]!.GetValue<string>() == type).Select(entry => entry!["fullUrl"]!.GetValue<string>())];
        (FhirOrder first, FhirOrder second) = (InventedOrders.Saved(InventedOrders.Full), InventedOrders.Changed(InventedOrders.Full));

        Assert.Equal(FhirBundle.Text(first), FhirBundle.Text(InventedOrders.Saved(InventedOrders.Full)));
        Assert.All(OfTheCase, type => Assert.Equal(Names(first, type), Names(second, type)));
        Assert.All(OfThePlan, type => Assert.Empty(Names(first, type).Intersect(Names(second, type))));
    }

    [Fact]
    public void There_are_no_extensions_and_only_printable_ascii()
    {
        Assert.DoesNotContain(InventedOrders.All.SelectMany(order => BundleChecks.Objects(FhirBundle.Of(order))), part => part.ContainsKey("extension") || part.ContainsKey("modifierExtension"));
        Assert.All(FhirBundle.Text(InventedOrders.Drafted(InventedOrders.Full) with { Name = "\u001b[2J \u202e \u00e9" }), letter => Assert.True(letter is '\n' or (>= ' ' and <= '~'), $"{(int)letter:x}"));
    }

    [Fact]
    public void A_flexion_says_what_it_is_on_which_knee_and_how_much()
    {
        JsonObject flexion = All(InventedOrders.Of(InventedOrders.Full), "Observation").First(one => one["code"]!.ToJsonString().Contains("41343-5", StringComparison.Ordinal));

        Assert.Equal("""{"coding":[{"system":"http://loinc.org","code":"41343-5"},{"system":"urn:x-progression:measure","code":"flexion_active"}],"text":"Active flexion"}""", flexion["code"]!.ToJsonString());
        Assert.Equal("left knee", flexion["bodySite"]!["text"]!.GetValue<string>());
        Assert.Equal("deg", flexion["valueQuantity"]!["code"]!.GetValue<string>());
    }

    [Fact]
    public void A_corrected_reading_says_so_with_what_stood_there()
    {
        JsonObject corrected = Assert.Single(All(InventedOrders.Of(InventedOrders.Full), "Observation"), one => one["status"]!.GetValue<string>() == "corrected");

        Assert.StartsWith("59.5 deg until ", corrected["note"]![0]!["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.EndsWith(", put right by KL: Digits were swapped.", corrected["note"]![0]!["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_goal_bounds_the_side_on_which_it_is_reached()
    {
        JsonObject[] goals = [.. All(InventedOrders.Drafted(InventedOrders.Full), "Goal")];

        // Operated on 1 November: three weeks later is the 22nd, four the 29th, six 13 December. What was due before the plan begins is no goal of it.
        Assert.Equal("""{"measure":{"coding":[{"system":"http://loinc.org","code":"41343-5"},{"system":"urn:x-progression:measure","code":"flexion_active"}],"text":"Active flexion"},"detailRange":{"low":{"value":99,"system":"http://unitsofmeasure.org","code":"deg"}},"dueDate":"2026-11-29"}""", Target("flexion-week-4"));
        Assert.Equal("""{"measure":{"coding":[{"system":"urn:x-progression:measure","code":"extension_lag"}],"text":"Extension lag"},"detailRange":{"high":{"value":5,"system":"http://unitsofmeasure.org","code":"deg"}},"dueDate":"2026-11-22"}""", Target("lag-week-3"));
        Assert.Equal("""{"dueDate":"2026-12-13"}""", Target("sit-to-stand"));
        Assert.DoesNotContain(goals, goal => goal["identifier"]![0]!["value"]!.GetValue<string>() == "flexion-week-2");

        string Target(string id) => goals.Single(goal => goal["identifier"]![0]!["value"]!.GetValue<string>() == id)["target"]![0]!.ToJsonString();
    }

    [Fact]
    public void Every_week_of_stim_and_exercise_is_ordered_once()
    {
        FhirOrder order = InventedOrders.Drafted(InventedOrders.Full);
        int weeks = order.Plan!.Cells.Values.Count(cell => cell.Content is ActiveCell or StimCell { Rung: not Rung.Stopped });
        int ordered = All(order, "ServiceRequest").Sum(one => Weeks(one["occurrenceTiming"]!["repeat"]!["boundsPeriod"]!));

        Assert.Equal(weeks, ordered);
        Assert.All(All(order, "ServiceRequest"), one => Assert.Equal("draft", one["status"]!.GetValue<string>()));

        static int Weeks(JsonNode period) =>
            (int)Math.Ceiling((DateOnly.Parse(period["end"]!.GetValue<string>(), null).DayNumber - DateOnly.Parse(period["start"]!.GetValue<string>(), null).DayNumber + 1) / 7.0);
    }

    [Theory]
    [InlineData(new ReviewStep[0], "draft", "")]
    [InlineData(new[] { ReviewStep.Requested }, "draft", "requested")]
    [InlineData(new[] { ReviewStep.Requested, ReviewStep.Withdrawn }, "draft", "")]
    [InlineData(new[] { ReviewStep.Requested, ReviewStep.Returned }, "draft", "completed")]
    [InlineData(new[] { ReviewStep.Requested, ReviewStep.Signed }, "active", "completed")]
    public void A_plan_is_active_only_when_it_is_signed(ReviewStep[] steps, string plan, string task)
    {
        FhirOrder order = InventedOrders.Reviewed(InventedOrders.Full, steps);

        Assert.Equal(plan, All(order, "CarePlan").Single()["status"]!.GetValue<string>());
        Assert.Equal(task, string.Concat(All(order, "Task").Select(one => one["status"]!.GetValue<string>())));
    }

    [Fact]
    public void A_signature_names_the_revision_by_its_hash_and_one_of_an_earlier_revision_does_not_count()
    {
        JsonObject signed = Assert.Single(All(InventedOrders.Reviewed(InventedOrders.Full, ReviewStep.Requested, ReviewStep.Signed), "Provenance"), one => one.ContainsKey("signature"));
        FhirOrder changed = InventedOrders.Changed(InventedOrders.Full, ReviewStep.Requested, ReviewStep.Signed);

        Assert.Equal(new string('a', 64), signed["entity"]![0]!["what"]!["identifier"]!["value"]!.GetValue<string>());
        Assert.DoesNotContain(All(changed, "Provenance"), one => one.ContainsKey("signature"));
        Assert.Equal("draft", All(changed, "CarePlan").Single()["status"]!.GetValue<string>());
        Assert.StartsWith("UNSIGNED DRAFT: changed since it was signed by mb", All(changed, "CarePlan").Single()["note"]![0]!["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static IEnumerable<JsonObject> All(FhirOrder order, string type) =>
        FhirBundle.Of(order)["entry"]!.AsArray().Select(entry => entry!["resource"]!.AsObject()).Where(resource => resource["resourceType"]!.GetValue<string>() == type);

    private static IEnumerable<string> Wrong(Func<JsonObject, IEnumerable<string>> check) =>
        InventedOrders.All.SelectMany((order, number) => check(FhirBundle.Of(order)).Select(error => $"{number} {order.Patient.Code}: {error}")).Take(20);
}
