using System.Collections.Immutable;
using Progression.App.Stores;
using Progression.Core.Caseload;
using Progression.Core.Forecasts;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Caseload;

/// <summary>The whole caseload of a store as it was read once, judged on one day.</summary>
/// <param name="Generation">The state of the store; every save raises it.</param>
/// <param name="Today">The day the cases were judged on.</param>
/// <param name="Cases">The cases, in no particular order.</param>
/// <param name="HitRate">How often forecasts held in this store; null where nothing was read.</param>
public sealed record CaseListing(long Generation, DateOnly Today, ImmutableArray<CaseLine> Cases, HitRate? HitRate)
{
    private const int ReportEvery = 500;

    /// <summary>Reads it. A store whose folder is not there yet has no cases, and none is made.</summary>
    /// <exception cref="StoreException">The store is busy, damaged or not permitted.</exception>
    public static CaseListing Read(OpenStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        DateOnly today = store.Today;
        if (!Directory.Exists(store.Folder))
        {
            return new CaseListing(0, today, [], null);
        }

        (CaseFactsReader facts, CaseStandings judge) = (new(), new(store.Library, today));
        (IReadOnlySet<string> drafts, Actor by) = (store.Drafts.Codes(), store.Book.By);
        (int scored, int hits) = (0, 0);
        int rows = 0;
        CaseList<CaseLine?> read = store.Book.List(row =>
        {
            if (++rows % ReportEvery == 0)
            {
                store.Progress?.Report(new("reading the list of cases", rows, 0));
            }

            scored += CaseSummary.Count(row, CaseSummary.ForecastsScored);
            hits += CaseSummary.Count(row, CaseSummary.ForecastHits);
            return Line(row, facts.Of(row) is { } known ? judge.Of(known) : null, by, drafts);
        });
        return new CaseListing(read.Generation, today, [.. read.Cases.OfType<CaseLine>()], Core.Forecasts.HitRate.Of(scored, hits, store.Library));
    }

    /// <summary>The caseload as it is now; read again only when somebody has saved or another day has begun.</summary>
    public CaseListing Now(OpenStore store)
    {
        ArgumentNullException.ThrowIfNull(store);
        if (store.Today != Today || (Generation == 0 ? Directory.Exists(store.Folder) : store.Book.HasChangedSince(Generation)))
        {
            return Read(store);
        }

        IReadOnlySet<string> drafts = store.Drafts.Codes();
        return Cases.All(line => line.HasDraft == drafts.Contains(line.Code.Text)) ? this
            : this with { Cases = [.. Cases.Select(line => line with { HasDraft = drafts.Contains(line.Code.Text) })] };
    }

    private static CaseLine? Line(CaseRow row, CaseStanding? standing, Actor by, IReadOnlySet<string> drafts)
    {
        if (CaseCode.Parse(row.CaseCode) is not { } code || row.Heads.IsEmpty)
        {
            return null;
        }

        CaseHead last = row.Heads.MaxBy(head => head.At)!;
        return new CaseLine
        {
            Code = code,
            Knee = row.Fields.GetValueOrDefault(CaseSummary.Side, ""),
            Operation = CaseSummary.Day(row, CaseSummary.Operation),
            Assessed = CaseSummary.Day(row, CaseSummary.LastAssessed),
            Weeks = CaseSummary.Count(row, CaseSummary.Weeks) is > 0 and int weeks ? weeks : null,
            Revision = row.Heads.FirstOrDefault(head => head.Kind == RecordKind.Plan)?.Revision,
            SavedBy = last.By.Name,
            SavedAt = last.At,
            IsMine = row.Heads.Any(head => head.By.UserId == by.UserId),
            HasDraft = drafts.Contains(code.Text),
            Signed = CaseSummary.Count(row, CaseSummary.Signed) is > 0 and int signed ? signed : null,
            IsAsked = row.Fields.ContainsKey(CaseSummary.Waiting),
            IsReturned = row.Fields.ContainsKey(CaseSummary.Returned),
            Standing = standing,
        };
    }
}
