using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Library;

/// <summary>The clinical library as JSON. Every value is the text that the library files write, with its unit.</summary>
public static class LibraryJson
{
    /// <summary>{version, default_regimen, kinds: [{kind, count, entries: [{id, title, standing}]}]}.</summary>
    public static JsonObject List(ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return new JsonObject
        {
            ["version"] = library.Version,
            ["default_regimen"] = library.DefaultRegimen,
            ["kinds"] = Array(LibraryCards.Of(library).GroupBy(card => card.Kind).Select(kind => new JsonObject
            {
                ["kind"] = kind.Key,
                ["count"] = kind.Count(),
                ["entries"] = Array(kind.Select(card => new JsonObject { ["id"] = card.Id, ["title"] = card.Title, ["standing"] = card.Standing })),
            })),
        };
    }

    /// <summary>{entries: [{entry, id, and every field under its key; grouped fields in an object of their own}]}: an id may name entries of two kinds.</summary>
    public static JsonObject Show(IEnumerable<LibraryCard> cards) => new() { ["entries"] = Array(cards.Select(Entry)) };

    /// <summary>{folder, good, version or null, problems: [{file, line or null, field, wrong, allowed, found}]}.</summary>
    public static JsonObject Check(string folder, LibraryResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new JsonObject
        {
            ["folder"] = folder,
            ["good"] = result.Library is not null,
            ["version"] = result.Library?.Version,
            ["problems"] = Array(result.Problems.Select(Problem)),
        };
    }

    private static JsonObject Problem(FileProblem problem) => new()
    {
        ["file"] = problem.File,
        ["line"] = problem.Line,
        ["field"] = problem.Field,
        ["wrong"] = problem.Wrong,
        ["allowed"] = problem.Allowed,
        ["found"] = problem.Found,
    };

    private static JsonObject Entry(LibraryCard card)
    {
        JsonObject entry = new() { ["entry"] = card.Kind, ["id"] = card.Id };
        foreach (LibraryCardField field in card.Fields)
        {
            string[] path = field.Key.Split('.');
            JsonObject place = entry;
            if (path.Length == 2)
            {
                entry[path[0]] ??= new JsonObject();
                place = entry[path[0]]!.AsObject();
            }

            place[path[^1]] = field.Text;
        }

        return entry;
    }

    private static JsonArray Array(IEnumerable<JsonObject> items) => new([.. items]);
}
