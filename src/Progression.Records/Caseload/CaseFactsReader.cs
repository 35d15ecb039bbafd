using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Caseload;
using Progression.Core.People;
using Progression.Records.Storage;

namespace Progression.Records.Caseload;

/// <summary>Reads the facts of cases from rows of a list. One reader for one list: cases with the same answers come to share them.</summary>
public sealed class CaseFactsReader
{
    private readonly Dictionary<string, Screening> _screenings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<string>> _signs = new(StringComparer.Ordinal);

    /// <summary>The facts of a row; null when it has none, because what was stored is not a case of this program's form.</summary>
    public CaseFacts? Of(CaseRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        try
        {
            return CaseSummary.Day(row, CaseSummary.Operation) is DateOnly operation && row.Fields.TryGetValue(CaseSummary.Treated, out string? treated)
                ? Read(row, operation, treated.Split('/'))
                : null;
        }
        catch (Exception fault) when (fault is FormatException or IndexOutOfRangeException or InvalidOperationException or OverflowException or ArgumentOutOfRangeException)
        {
            return null; // A list of another version: the case is listed by its code, and opening it tells more.
        }
    }

    private CaseFacts Read(CaseRow row, DateOnly operation, string[] treated) => new()
    {
        Operation = operation,
        Screening = row.Fields.TryGetValue(CaseSummary.Screened, out string? screening) ? Shared(_screenings, screening, CaseFactsText.Screening) : Screening.NotDone,
        Signs = row.Fields.TryGetValue(CaseSummary.Signs, out string? signs) ? Shared(_signs, signs, text => [.. text.Split(',')]) : [],
        Visits = row.Fields.TryGetValue(CaseSummary.Visits, out string? visits) ? CaseFactsText.Visits(visits) : [],
        Notes = row.Fields.TryGetValue(CaseSummary.Notes, out string? notes) ? CaseFactsText.Notes(notes, operation) : [],
        FirstTreated = treated[0].Length == 0 ? null : operation.AddDays(CaseFactsText.Whole(treated[0])),
        TreatedSince = treated[1].Length == 0 ? [] : [.. treated[1].Split(',').Select(day => CaseFactsText.Whole(day))],
        Stimulated = treated[2].Length > 0,
        Plan = Plan(row),
    };

    private static PlanOutline? Plan(CaseRow row)
    {
        CaseHead? head = row.Heads.FirstOrDefault(one => one.Kind == RecordKind.Plan);
        return head is not null && row.Fields.TryGetValue(CaseSummary.Weeks, out string? weeks)
            ? new PlanOutline(head.Revision, CaseFactsText.Whole(weeks), row.Fields.GetValueOrDefault(CaseSummary.Stim, ""))
            {
                SignedRevision = row.Fields.TryGetValue(CaseSummary.Signed, out string? signed) ? int.Parse(signed, NumberStyles.None, CultureInfo.InvariantCulture) : null,
            }
            : null;
    }

    private static T Shared<T>(Dictionary<string, T> known, string text, Func<string, T> read)
    {
        if (!known.TryGetValue(text, out T? value))
        {
            known[text] = value = read(text);
        }

        return value;
    }
}
