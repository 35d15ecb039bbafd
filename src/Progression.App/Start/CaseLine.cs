using System.Globalization;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Start;

/// <summary>A case in the list, from what the store keeps for lists. A text is empty and a number null where nothing is known.</summary>
public sealed record CaseLine
{
    /// <summary>The code.</summary>
    public required CaseCode Code { get; init; }

    /// <summary>Which knee: left or right.</summary>
    public required string Knee { get; init; }

    /// <summary>The day of the operation.</summary>
    public DateOnly? Operation { get; init; }

    /// <summary>The day of the latest assessment.</summary>
    public DateOnly? Assessed { get; init; }

    /// <summary>Weeks of the plan.</summary>
    public int? Weeks { get; init; }

    /// <summary>The plan's revision; null when the case has no plan.</summary>
    public int? Revision { get; init; }

    /// <summary>Who saved last.</summary>
    public required string SavedBy { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset SavedAt { get; init; }

    /// <summary>Whether unsaved changes to the plan are kept as a draft.</summary>
    public bool HasDraft { get; init; }

    /// <summary>The line of a stored row; null when the row is not a case of ours.</summary>
    public static CaseLine? Of(CaseRow row, DraftShelf drafts)
    {
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(drafts);
        if (CaseCode.Parse(row.CaseCode) is not { } code || row.Heads.IsEmpty)
        {
            return null;
        }

        RevisionStamp last = row.Heads.MaxBy(head => head.At)!;
        return new CaseLine
        {
            Code = code,
            Knee = row.Fields.GetValueOrDefault(CaseSummary.Side, ""),
            Operation = Day(row, CaseSummary.Operation),
            Assessed = Day(row, CaseSummary.LastAssessed),
            Weeks = int.TryParse(row.Fields.GetValueOrDefault(CaseSummary.Weeks), NumberStyles.None, CultureInfo.InvariantCulture, out int weeks) ? weeks : null,
            Revision = row.Heads.FirstOrDefault(head => head.Kind == RecordKind.Plan)?.Revision,
            SavedBy = last.By.Name,
            SavedAt = last.At,
            HasDraft = drafts.Has(code),
        };
    }

    private static DateOnly? Day(CaseRow row, string field) =>
        DateOnly.TryParseExact(row.Fields.GetValueOrDefault(field), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
}
