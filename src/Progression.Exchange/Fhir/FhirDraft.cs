using System.Globalization;
using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Core.Reviews;

namespace Progression.Exchange.Fhir;

/// <summary>A bundle while it is put together: its entries so far, and how they are named.</summary>
internal sealed class FhirDraft
{
    private readonly List<(string Url, JsonObject Resource)> _entries = [];

    public FhirDraft(FhirOrder order)
    {
        Order = order;
        Code = order.Patient.Code.Text;
        Revision = order.Standing.Plan.Revision.ToString(CultureInfo.InvariantCulture);
        Patient = FhirUuid.Urn("patient", Code);
        Plan = FhirUuid.Urn("plan", Code, Revision);
    }

    public FhirOrder Order { get; }

    public string Code { get; }

    /// <summary>The revision of the plan; 0 for one that was not saved.</summary>
    public string Revision { get; }

    /// <summary>The name of the patient's entry.</summary>
    public string Patient { get; }

    /// <summary>The name of the plan's entry.</summary>
    public string Plan { get; }

    /// <summary>The operated knee in words: "left knee".</summary>
    public string Knee => $"{Word(Order.Patient.Operation.Side)} knee";

    /// <summary>Adds an entry.</summary>
    public void Add(string url, JsonObject resource) => _entries.Add((url, resource));

    /// <summary>The name of an entry that belongs to this revision of the plan.</summary>
    public string OfPlan(string kind, string key) => FhirUuid.Urn(kind, Code, Revision, key);

    /// <summary>The name of an entry that belongs to the case, whatever its plan.</summary>
    public string OfCase(string kind, string key) => FhirUuid.Urn(kind, Code, key);

    /// <summary>A reference to an entry.</summary>
    public static JsonNode To(string url) => FhirNode.Of(("reference", url))!;

    /// <summary>A reference to whoever works under an account; their entry is added when it is asked for first.</summary>
    public JsonNode To(string userId, string name)
    {
        string url = FhirUuid.Urn("practitioner", userId, name);
        if (_entries.All(entry => entry.Url != url))
        {
            Add(url, FhirNode.Resource(
                "Practitioner",
                ("identifier", FhirNode.List(FhirNode.Identifier(FhirSystems.Account, userId))),
                ("name", FhirNode.List(FhirNode.Of(("text", FhirNode.Words(name)))))));
        }

        return To(url);
    }

    /// <summary>A reference to whoever did something about a review.</summary>
    public JsonNode To(ReviewPerson person) => To(person.UserId, person.Name);

    /// <summary>The bundle as it is now.</summary>
    public JsonObject Bundle() => FhirNode.Resource(
        "Bundle",
        ("identifier", FhirNode.Identifier("urn:ietf:rfc:3986", FhirUuid.Urn("bundle", Code, Revision, FhirNode.Instant(Order.At).GetValue<string>()))),
        ("type", "collection"),
        ("timestamp", FhirNode.Instant(Order.At)),
        ("entry", FhirNode.List(_entries.Select(entry => (JsonNode?)FhirNode.Of(("fullUrl", entry.Url), ("resource", entry.Resource))))));

    /// <summary>"left" or "right".</summary>
    public static string Word(Side side) => side == Side.Left ? "left" : "right";
}
