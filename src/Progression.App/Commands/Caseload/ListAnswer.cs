using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json.Nodes;
using Progression.App.Caseload;
using Progression.Core.Caseload;

namespace Progression.App.Commands.Caseload;

/// <summary>The list as JSON, described in shared/schema. What is not known is null.</summary>
internal static class ListAnswer
{
    internal static JsonObject Of(CaseListing listing, ImmutableArray<CaseLine> cases) => new()
    {
        ["schema"] = "list/1",
        ["today"] = Day(listing.Today),
        ["total"] = listing.Cases.Length,
        ["cases"] = new JsonArray([.. cases.Select(Of)]),
    };

    private static JsonObject Of(CaseLine line) => new()
    {
        ["code"] = line.Code.Text,
        ["knee"] = line.Knee.Length == 0 ? null : line.Knee,
        ["operated"] = Day(line.Operation),
        ["week"] = line.Standing?.Week,
        ["weeks"] = line.Weeks,
        ["revision"] = line.Revision,
        ["signed_revision"] = line.Signed,
        ["review"] = line.IsAsked ? "asked" : line.IsReturned ? "returned" : null,
        ["assessed"] = Day(line.Assessed),
        ["lag_deg"] = line.Standing?.Lag,
        ["flexion_deg"] = line.Standing?.Flexion,
        ["saved_by"] = line.SavedBy,
        ["saved_at"] = line.SavedAt.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture),
        ["state"] = List(line.Marks, mark => CaseWords.Of(mark)),
        ["ended"] = line.Standing?.HasEnded,
        ["due"] = List(line.Standing?.Dues ?? [], Of),
        ["behind"] = List(line.Standing?.Behind ?? [], Of),
        ["blocked"] = List(line.Standing?.Blocked ?? [], reason => reason),
    };

    private static JsonObject Of(Due due) => new() { ["what"] = due.Words, ["on"] = Day(due.On), ["limit"] = due.Limit.Id };

    private static JsonObject Of(BehindGoal behind) => new()
    {
        ["measure"] = behind.Measure.Id,
        ["unit"] = behind.Measure.Unit,
        ["value"] = behind.Value,
        ["goal"] = Math.Round(behind.Goal, 6),
        ["day"] = behind.Day,
    };

    private static JsonArray List<T>(ImmutableArray<T> items, Func<T, JsonNode?> of) => new([.. items.Select(of)]);

    private static string? Day(DateOnly? day) => day?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
