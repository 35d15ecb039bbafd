using System.Text.Json;
using Progression.Core.Clinic;
using Progression.Records.Storage;

namespace Progression.Records.Tests.Storage;

/// <summary>Invented submissions.</summary>
internal static class Sample
{
    public static readonly Actor Therapist = new("1001", "Robin Example");
    public static readonly Actor Supervisor = new("1002", "Kim Sample");
    public static readonly DateTimeOffset Monday = new(2026, 3, 2, 8, 30, 0, 250, TimeSpan.Zero);

    /// <summary>An account that works on records of its own; the therapist where none is given.</summary>
    public static ClinicPerson Alone(Actor? by = null) => ClinicPerson.Alone((by ?? Therapist).UserId, (by ?? Therapist).Name);

    /// <summary>Takes every top-level text or number, named by kind: <c>plan.week</c>; but what a review waits for by the name the store knows.</summary>
    public static IReadOnlyDictionary<string, string> Fields(RecordKind kind, JsonElement body) =>
        body.EnumerateObject().ToDictionary(member => (kind, member.Name) == (RecordKind.Review, CaseRow.Waiting) ? CaseRow.Waiting : $"{kind}.{member.Name}".ToLowerInvariant(), member => member.Value.ToString());

    public static Submission Plan(string caseCode, RevisionRef? basis, string body) => Of(caseCode, new Draft(RecordKind.Plan, basis, body));

    public static Submission Of(string caseCode, params Draft[] drafts) => new(caseCode, [.. drafts], Therapist, Monday);

    public static RevisionStamp Saved(AppendResult result) => Assert.Single(Assert.IsType<AppendResult.Saved>(result).Stamps);

    /// <summary>Saves revisions 1 to n of a plan and returns the last.</summary>
    public static RevisionStamp SaveRevisions(IPlanStore store, string caseCode, int count)
    {
        RevisionStamp? last = null;
        for (int week = 1; week <= count; week++)
        {
            last = Saved(store.Append(Plan(caseCode, last?.Reference, $$"""{"week":{{week}},"text":"contractions {{week * 10}}"}""")));
        }

        return last!;
    }
}
