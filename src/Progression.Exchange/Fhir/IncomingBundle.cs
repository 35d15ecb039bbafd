using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using Progression.Exchange.Import;

namespace Progression.Exchange.Fhir;

/// <summary>The entries of a bundle that came in, with what is wrong with the bundle itself.</summary>
/// <param name="Entries">The entries that hold a resource.</param>
/// <param name="Problems">What is wrong with the bundle and its entries, whatever they hold.</param>
internal sealed record IncomingBundle(ImmutableArray<IncomingEntry> Entries, ImmutableArray<ImportProblem> Problems)
{
    private const string Allowed = "a bundle of FHIR R4 as JSON, of type collection, searchset or transaction";

    // Deeper than any resource of R4 reaches; catches what was nested to break a reader.
    private const int MostDepth = 64;

    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = MostDepth, AllowDuplicateProperties = false };
    private static readonly ImmutableArray<string> Types = ["collection", "searchset", "transaction"];
    private static readonly ImmutableArray<string> Methods = ["POST", "PUT"];

    /// <summary>The bundle of a file. The elements stay good as long as the document that is given back is not disposed of.</summary>
    public static (IncomingBundle Bundle, JsonDocument? Document) Read(byte[] bytes)
    {
        (string? text, ImportProblem? problem) = ImportText.Of(bytes);
        if (text is null)
        {
            return (Bad(problem!), null);
        }

        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text, Strict);
        }
        catch (JsonException fault)
        {
            string at = string.Create(CultureInfo.InvariantCulture, $"line {fault.LineNumber + 1}, byte {fault.BytePositionInLine + 1}");
            return (Bad(new ImportProblem(ImportPlace.File, "This is no whole JSON text, or a name stands twice in one object.", Allowed, at)), null);
        }

        return (Of(document.RootElement), document);
    }

    private static IncomingBundle Bad(ImportProblem problem) => new([], [problem]);

    private static IncomingBundle Of(JsonElement root)
    {
        FhirPart bundle = root.ValueKind == JsonValueKind.Object ? new FhirPart(root) : default;
        string type = root.ValueKind == JsonValueKind.Object ? bundle.Text("resourceType") ?? "" : root.ValueKind.ToString();
        if (type != "Bundle")
        {
            return Bad(new ImportProblem(ImportPlace.File with { Field = "resourceType" }, "This is no bundle.", Allowed, type));
        }

        if (bundle.Text("type") is not { } kind || !Types.Contains(kind))
        {
            return Bad(new ImportProblem(ImportPlace.File with { Field = "type" }, "A bundle of this type is not read.", string.Join(", ", Types), bundle.Raw("type")));
        }

        if (!root.TryGetProperty("entry", out JsonElement list) || list.ValueKind != JsonValueKind.Array || list.GetArrayLength() == 0)
        {
            return Bad(new ImportProblem(ImportPlace.File with { Field = "entry" }, "The bundle has no entries.", "a list of entries", bundle.Raw("entry")));
        }

        return Of([.. list.EnumerateArray()]);
    }

    private static IncomingBundle Of(ImmutableArray<JsonElement> list)
    {
        var entries = ImmutableArray.CreateBuilder<IncomingEntry>(list.Length);
        var problems = ImmutableArray.CreateBuilder<ImportProblem>();
        Dictionary<string, int> names = new(StringComparer.Ordinal);
        for (int number = 1; number <= list.Length; number++)
        {
            FhirPart? entry = list[number - 1].ValueKind == JsonValueKind.Object ? new FhirPart(list[number - 1]) : null;
            if (entry?.Part("resource") is not { } resource || resource.Text("resourceType") is null)
            {
                problems.Add(new ImportProblem(ImportPlace.Entry(number, "resource"), "The entry holds no resource.", "a resource with its type", ""));
                continue;
            }

            string? url = entry.Value.Text("fullUrl");
            if (url is not null && !names.TryAdd(url, number))
            {
                problems.Add(new ImportProblem(ImportPlace.Entry(number, "fullUrl"), $"Entry {names[url]} has the same name.", "a name of its own for each entry", url));
            }

            if (entry.Value.Part("request") is { } request && (request.Text("method") is not { } method || !Methods.Contains(method)))
            {
                problems.Add(new ImportProblem(ImportPlace.Entry(number, "request.method"), "Only what is added is read.", string.Join(", ", Methods), request.Raw("method")));
            }

            entries.Add(new IncomingEntry(number, url, resource));
        }

        return new IncomingBundle(entries.ToImmutable(), problems.ToImmutable());
    }
}
