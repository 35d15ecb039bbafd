using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Progression.Records.Yaml;

namespace Progression.Records.Tests.Cases;

/// <summary>A YAML text as JSON by the core schema of YAML 1.2.2, section 10.3: plain numbers become numbers, everything else of a case file is text.</summary>
internal static partial class YamlAsJson
{
    public static string Of(string yaml) => Node(YamlDocument.Read("some.yaml", Encoding.UTF8.GetBytes(yaml)).Root!).ToJsonString();

    private static JsonNode Node(YamlNode node) => node switch
    {
        YamlMap map => new JsonObject(map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, (JsonNode?)Node(entry.Value)))),
        YamlList list => new JsonArray([.. list.Items.Select(Node)]),
        YamlScalar { IsPlain: true } scalar when Whole().IsMatch(scalar.Text) => JsonValue.Create(int.Parse(scalar.Text, CultureInfo.InvariantCulture)),
        YamlScalar { IsPlain: true } scalar when Decimal().IsMatch(scalar.Text) => JsonValue.Create(double.Parse(scalar.Text, CultureInfo.InvariantCulture)),
        YamlScalar scalar => JsonValue.Create(scalar.Text),
        _ => throw new ArgumentException(node.Kind, nameof(node)),
    };

    [GeneratedRegex(@"^[-+]?[0-9]+\z")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?\z")]
    private static partial Regex Decimal();
}
