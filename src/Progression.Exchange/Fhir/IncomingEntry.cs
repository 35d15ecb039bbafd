using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>An entry of a bundle that came in.</summary>
/// <param name="Number">Its place, from 1.</param>
/// <param name="Url">Its name; null when it has none.</param>
/// <param name="Resource">What it holds.</param>
internal sealed record IncomingEntry(int Number, string? Url, FhirPart Resource)
{
    /// <summary>The type of its resource; empty when it says none.</summary>
    public string Type => Resource.Text("resourceType") ?? "";

    /// <summary>Where something of it stands.</summary>
    /// <param name="path">The field; empty for the whole entry.</param>
    public ImportPlace At(string path = "") => ImportPlace.Entry(Number, path);

    /// <summary>Whether a reference means it: by its name, or by type and id as a server writes them.</summary>
    public bool IsMeant(string reference) =>
        Url == reference
        || (Resource.Text("id") is { } id && reference == $"{Type}/{id}")
        || (Url is { } url && !reference.Contains(':', StringComparison.Ordinal) && reference.StartsWith(Type + "/", StringComparison.Ordinal) && url.EndsWith("/" + reference, StringComparison.Ordinal));
}
