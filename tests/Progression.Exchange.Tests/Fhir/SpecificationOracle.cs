using System.IO.Compression;
using System.Text.Json.Nodes;
using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;
using System.Xml.XPath;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>
/// The second validator, which shares no code with the first: HL7's own XML schema and Schematron rules of R4, run by the XML classes of .NET on the XML form
/// of the bundle. The schema knows elements, their order and number, types and required codes; the rules know the invariants.
/// </summary>
internal static class SpecificationOracle
{
    private static readonly string[] Types =
        ["Bundle", "Patient", "Procedure", "Observation", "Goal", "CarePlan", "ServiceRequest", "Task", "Provenance", "Practitioner"];

    private static readonly XmlSchemaSet Schemas = ReadSchemas();
    private static readonly IReadOnlyList<SchematronRule> Rules = [.. Types.SelectMany(ReadRules).DistinctBy(rule => (rule.Context, rule.Test))];

    /// <summary>How many rules are asked, and how many are written in a newer XPath than .NET knows and so are not.</summary>
    public static (int Asked, int Left) RuleCount => (Rules.Count(rule => rule.IsReadable), Rules.Count(rule => !rule.IsReadable));

    /// <summary>The rules that are not asked.</summary>
    public static IEnumerable<string> Unasked => Rules.Where(rule => !rule.IsReadable).Select(rule => rule.Says[..Math.Min(5, rule.Says.Length)]).Distinct();

    /// <summary>What is wrong with a bundle; empty when nothing is.</summary>
    public static IReadOnlyList<string> Errors(JsonObject bundle)
    {
        List<string> errors = [];
        XDocument xml = new(FhirXml.Of(bundle));
        xml.Validate(Schemas, (_, fault) => errors.Add("schema: " + fault.Message));
        XPathNavigator root = xml.CreateNavigator();
        HashSet<string> elements = [.. xml.Descendants().Select(element => element.Name.LocalName)];
        errors.AddRange(Rules.Where(rule => rule.IsReadable && rule.IsAbout(elements)).SelectMany(rule => rule.Broken(root)).Select(says => "rule: " + says));
        return errors;
    }

    private static IEnumerable<SchematronRule> ReadRules(string type)
    {
        using ZipArchive specification = Specification();
        XNamespace sch = "http://purl.oclc.org/dsdl/schematron";
        using Stream file = specification.GetEntry(type.ToLowerInvariant() + ".sch")!.Open();
        return
        [
            .. from rule in XDocument.Load(file).Descendants(sch + "rule")
               from assert in rule.Elements(sch + "assert")
               select new SchematronRule(rule.Attribute("context")!.Value, assert.Attribute("test")!.Value, assert.Value),
        ];
    }

    private static XmlSchemaSet ReadSchemas()
    {
        XmlSchemaSet schemas = new() { XmlResolver = null };
        using ZipArchive specification = Specification();
        XmlReaderSettings settings = new() { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null };
        foreach (string name in new[] { "xml.xsd", "fhir-xhtml.xsd", "fhir-single.xsd" })
        {
            using Stream file = specification.GetEntry(name)!.Open();
            using XmlReader reader = XmlReader.Create(file, settings);
            schemas.Add(null, reader);
        }

        schemas.Compile();
        return schemas;
    }

    private static ZipArchive Specification() => ZipFile.OpenRead(Path.Combine(AppContext.BaseDirectory, "specification.zip"));
}
