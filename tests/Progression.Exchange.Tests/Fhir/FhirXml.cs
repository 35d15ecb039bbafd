using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>FHIR JSON in the XML form of the specification: each member an element, each simple value an attribute. Knows nothing of what is allowed.</summary>
internal static class FhirXml
{
    public static readonly XNamespace Fhir = "http://hl7.org/fhir";

    /// <summary>A resource.</summary>
    public static XElement Of(JsonObject resource) => new(
        Fhir + resource["resourceType"]!.GetValue<string>(),
        resource.Where(member => member.Key != "resourceType").SelectMany(member => Elements(member.Key, member.Value)));

    private static IEnumerable<XElement> Elements(string name, JsonNode? value) => value switch
    {
        null => [],
        JsonArray items => items.SelectMany(item => Elements(name, item)),
        JsonObject resource when resource.ContainsKey("resourceType") => [new XElement(Fhir + name, Of(resource))],
        JsonObject part => [new XElement(Fhir + name, part.SelectMany(member => Elements(member.Key, member.Value)))],
        _ => [new XElement(Fhir + name, new XAttribute("value", Text(value)))],
    };

    private static string Text(JsonNode value) => value.GetValueKind() == JsonValueKind.String ? value.GetValue<string>() : value.ToJsonString();
}
