using System.Globalization;
using System.Text.Json;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Reviews;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>A plan whose review somebody asked for, as a list knows it.</summary>
/// <param name="Code">The case.</param>
/// <param name="Operation">The day of the operation; null when it is not known.</param>
/// <param name="AskedBy">The name of who asked.</param>
/// <param name="AskedByAccount">The account of who asked.</param>
/// <param name="AskedAt">When.</param>
/// <param name="Revision">For which revision of the plan.</param>
/// <param name="Newest">The newest revision of the plan; another one when it was changed since.</param>
/// <param name="Risk">What was found on the plan then.</param>
public sealed record WaitingReview(
    CaseCode Code, DateOnly? Operation, string AskedBy, string AskedByAccount, DateTimeOffset AskedAt, int Revision, int Newest, PlanRisk Risk)
{
    private const string ByName = "asked.name";
    private const string ByAccount = "asked.account";
    private const string AskedFor = "asked.rev";
    private const string Found = "asked.risk";

    /// <summary>Whether the plan was changed after the review was asked for.</summary>
    public bool IsStale => Newest != Revision;

    /// <summary>What waits of a row; null when nothing does.</summary>
    public static WaitingReview? Of(CaseRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        if (InstantText.Read(row.Fields.GetValueOrDefault(CaseSummary.Waiting)) is not { } at || CaseCode.Parse(row.CaseCode) is not { } code
            || row.Heads.FirstOrDefault(head => head.Kind == RecordKind.Plan) is not { } plan)
        {
            return null;
        }

        int?[] risk = [.. row.Fields.GetValueOrDefault(Found, "").Split('/').Select(Whole), null, null, null, null, null];
        return new WaitingReview(
            code, CaseSummary.Day(row, CaseSummary.Operation), row.Fields.GetValueOrDefault(ByName, ""), row.Fields.GetValueOrDefault(ByAccount, ""), at,
            CaseSummary.Count(row, AskedFor), plan.Revision, new PlanRisk(risk[0] ?? 0, risk[1] ?? 0, risk[2] ?? 0, risk[3] ?? 0, risk[4]));
    }

    /// <summary>Puts what lists need of a stored review among the fields of its case.</summary>
    internal static void Take(Dictionary<string, string> fields, JsonElement body)
    {
        ReviewRecord record;
        try
        {
            record = ReviewJsonReader.Read(body);
        }
        catch (Exception failure) when (failure is InvalidOperationException or KeyNotFoundException or ArgumentException or FormatException)
        {
            return; // Not a review of this program's form; whoever opens the case is told.
        }

        if (record.LastSigned is { } signed)
        {
            fields[CaseSummary.Signed] = Text(signed.Plan.Revision);
        }

        if (record.OpenReturn is { } back)
        {
            fields[CaseSummary.Returned] = InstantText.Of(back.At);
        }

        if (record.OpenRequest is { } request)
        {
            fields[CaseSummary.Waiting] = InstantText.Of(request.At);
            fields[ByName] = request.By.Name;
            fields[ByAccount] = request.By.UserId;
            fields[AskedFor] = Text(request.Plan.Revision);
            fields[Found] = request.Risk is { } risk
                ? string.Create(CultureInfo.InvariantCulture, $"{risk.Stops}/{risk.Severe}/{risk.Warnings}/{risk.Overrides}/{risk.Changed}") : "";
        }
    }

    private static int? Whole(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
