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

    /// <summary>What a reference may call it: its name, and type with id as servers write them.</summary>
    public IEnumerable<string> Names
    {
        get
        {
            if (Url is { } url)
            {
                yield return url;
                if (url.Split('/') is [.., var type, var last] && type == Type)
                {
                    yield return $"{type}/{last}";
                }
            }

            if (Resource.Text("id") is { } id)
            {
                yield return $"{Type}/{id}";
            }
        }
    }
}
