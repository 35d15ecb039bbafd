using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Records.Json;

namespace Progression.Records.Cases;

/// <summary>A case that two people changed at the same time, put together: what only one changed is as they have it.</summary>
/// <param name="Joined">The case put together; where both changed the same it is as this person has it.</param>
/// <param name="Both">What both changed, each in their own way, by name; empty when nothing was.</param>
public sealed record CaseFork(Case Joined, ImmutableArray<string> Both)
{
    private static readonly string[] Days = ["date", "on"];

    /// <summary>Puts two cases together.</summary>
    /// <param name="from">The case both were made from.</param>
    /// <param name="mine">This person's.</param>
    /// <param name="theirs">The one that was saved first.</param>
    public static CaseFork Of(Case from, Case mine, Case theirs)
    {
        List<string> both = [];
        JsonNode? joined = Join("", Node(from), (Node(mine), Node(theirs)), both);
        return new CaseFork(CaseJson.Read(JsonFields.Text(joined!.AsObject())), [.. both.Distinct()]);
    }

    private static JsonNode? Node(Case patient) => JsonNode.Parse(CaseJson.Write(patient));

    private static JsonNode? Join(string name, JsonNode? from, (JsonNode? Mine, JsonNode? Theirs) sides, List<string> both)
    {
        (JsonNode? mine, JsonNode? theirs) = sides;
        if (JsonNode.DeepEquals(mine, from) || JsonNode.DeepEquals(mine, theirs))
        {
            return theirs?.DeepClone();
        }

        if (JsonNode.DeepEquals(theirs, from))
        {
            return mine?.DeepClone();
        }

        if (mine is JsonObject one && theirs is JsonObject other)
        {
            return Fields(name, from as JsonObject ?? [], (one, other), both);
        }

        if (mine is JsonArray && theirs is JsonArray && Additions(from as JsonArray ?? [], (mine.AsArray(), theirs.AsArray())) is { } list)
        {
            return list;
        }

        both.Add(name.Replace('_', ' '));
        return mine?.DeepClone();
    }

    private static JsonObject Fields(string name, JsonObject from, (JsonObject Mine, JsonObject Theirs) sides, List<string> both)
    {
        IEnumerable<string> names = sides.Mine.Concat(sides.Theirs).Select(field => field.Key).Distinct();
        return JsonFields.Of(names.Select(field => KeyValuePair.Create(
            field, Join(name.Length == 0 ? field : name, from[field], (sides.Mine[field], sides.Theirs[field]), both))));
    }

    /// <summary>Both lists with what either added, by day; null where something that was there is another or gone, or where both added the same day.</summary>
    private static JsonArray? Additions(JsonArray from, (JsonArray Mine, JsonArray Theirs) sides)
    {
        List<JsonNode?> mine = [.. sides.Mine.Where(item => !Has(from, item))];
        List<JsonNode?> theirs = [.. sides.Theirs.Where(item => !Has(from, item))];
        bool kept = from.All(item => Has(sides.Mine, item) && Has(sides.Theirs, item));
        return kept && mine.All(item => theirs.All(other => Day(item) is null || Day(item) != Day(other)))
            ? [.. from.Concat(theirs).Concat(mine).OrderBy(Day, StringComparer.Ordinal).Select(item => item?.DeepClone())]
            : null;
    }

    private static bool Has(JsonArray list, JsonNode? item) => list.Any(one => JsonNode.DeepEquals(one, item));

    private static string? Day(JsonNode? item) => item is JsonObject fields ? Days.Select(name => fields[name]?.GetValue<string>()).FirstOrDefault(day => day is not null) : null;
}
