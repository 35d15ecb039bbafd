using System.Text.Json.Nodes;
using Progression.Exchange.Fhir;

namespace Progression.Exchange.Tests.Fhir;

public sealed class FhirBundleTests
{
    [Fact]
    public void Every_bundle_is_good_to_the_first_validator() => Assert.Empty(Wrong(FirelyOracle.Errors));

    [Fact]
    public void Every_bundle_is_good_to_the_schema_and_the_rules_of_the_standard() => Assert.Empty(Wrong(SpecificationOracle.Errors));

    [Fact]
    public void Every_reference_leads_to_an_entry_and_every_name_is_there_once() => Assert.Empty(Wrong(BundleChecks.Loose));

    [Fact]
    public void Every_unit_is_one_of_UCUM() => Assert.Empty(Wrong(BundleChecks.WrongUnits));

    private static IEnumerable<string> Wrong(Func<JsonObject, IEnumerable<string>> check) =>
        InventedOrders.All.SelectMany((order, number) => check(FhirBundle.Of(order)).Select(error => $"{number} {order.Patient.Code}: {error}")).Take(20);
}
