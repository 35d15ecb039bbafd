using System.Text.Json.Nodes;
using Fhir.Metrics;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>What both validators are known to miss: references that lead nowhere, and units that are none. Read from the JSON alone.</summary>
internal static class BundleChecks
{
    private static readonly SystemOfUnits Ucum = UCUM.Load();

    /// <summary>What is wrong with names and references: a name that is missing, twice or no UUID, a reference that leads to no entry.</summary>
    public static IReadOnlyList<string> Loose(JsonObject bundle)
    {
        List<string> names = [.. bundle["entry"]!.AsArray().Select(entry => entry!["fullUrl"]?.GetValue<string>() ?? "")];
        return
        [
            .. names.Where(name => !name.StartsWith("urn:uuid:", StringComparison.Ordinal) || !Guid.TryParseExact(name["urn:uuid:".Length..], "D", out _)).Select(name => $"no name: \"{name}\""),
            .. names.GroupBy(name => name).Where(same => same.Count() > 1).Select(same => $"a name twice: {same.Key}"),
            .. Members(bundle, "reference").Where(reference => !names.Contains(reference)).Select(reference => $"leads nowhere: {reference}"),
        ];
    }

    /// <summary>Units that UCUM does not know.</summary>
    public static IReadOnlyList<string> WrongUnits(JsonObject bundle) =>
        [.. Objects(bundle).Where(part => part["system"]?.GetValue<string>() == "http://unitsofmeasure.org").Select(part => part["code"]!.GetValue<string>()).Distinct().Where(code => !IsUcum(code))];

    /// <summary>Whether a code is one of UCUM.</summary>
    public static bool IsUcum(string code)
    {
        try
        {
            Ucum.Metric(code);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    /// <summary>How many of one unit make one of another.</summary>
    public static decimal Ratio(string code, string other) => Base(code) / Base(other);

    /// <summary>Every object in a bundle.</summary>
    public static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject part => part.SelectMany(member => Objects(member.Value)).Prepend(part),
        JsonArray items => items.SelectMany(Objects),
        _ => [],
    };

    private static decimal Base(string code) => Ucum.Canonical(Ucum.Quantity("1.00000000000000", code)).Value.ToDecimal();

    private static IEnumerable<string> Members(JsonNode node, string name) =>
        Objects(node).Select(part => part[name]).OfType<JsonValue>().Select(value => value.GetValue<string>());
}
