using System.Text.Json;

namespace Progression.Exchange.Fhir;

/// <summary>A part of a resource that came in. What is missing, or of another kind than asked for, is null: nothing of it is trusted.</summary>
internal readonly record struct FhirPart(JsonElement Json)
{
    /// <summary>An object under a name.</summary>
    public FhirPart? Part(string name) => Member(name) is { ValueKind: JsonValueKind.Object } found ? new FhirPart(found) : null;

    /// <summary>The objects of a list under a name; empty when it is none.</summary>
    public IEnumerable<FhirPart> Parts(string name) => Member(name) is { ValueKind: JsonValueKind.Array } list
        ? list.EnumerateArray().Where(item => item.ValueKind == JsonValueKind.Object).Select(item => new FhirPart(item))
        : [];

    /// <summary>A text under a name.</summary>
    public string? Text(string name) => Member(name) is { ValueKind: JsonValueKind.String } found ? found.GetString() : null;

    /// <summary>Whether anything stands under a name.</summary>
    public bool Has(string name) => Member(name) is not null;

    /// <summary>A whole number under a name.</summary>
    public int? Whole(string name) => Member(name) is { ValueKind: JsonValueKind.Number } found && found.TryGetInt32(out int number) ? number : null;

    /// <summary>Yes or no under a name.</summary>
    public bool? Truth(string name) => Member(name) is { ValueKind: JsonValueKind.True or JsonValueKind.False } found ? found.GetBoolean() : null;

    /// <summary>A number under a name, as the nearest double and exactly; null for one of more digits or size than either can hold.</summary>
    public (double Nearest, decimal Exact)? Number(string name) =>
        Member(name) is { ValueKind: JsonValueKind.Number } found && found.TryGetDecimal(out decimal exact) && found.TryGetDouble(out double nearest) ? (nearest, exact) : null;

    /// <summary>What stands under a name, as text to show.</summary>
    public string Raw(string name) => Member(name) is { } found ? found.ValueKind == JsonValueKind.String ? found.GetString()! : found.GetRawText() : "";

    /// <summary>The codes under a name that have a system: "code.coding".</summary>
    public IEnumerable<(string System, string Code)> Codings(string name) =>
        from coding in Part(name)?.Parts("coding") ?? []
        let system = coding.Text("system")
        let code = coding.Text("code")
        where system is not null && code is not null
        select (system, code);

    private JsonElement? Member(string name) => Json.TryGetProperty(name, out JsonElement value) && value.ValueKind != JsonValueKind.Null ? value : null;
}
