using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Cases;
using Progression.Records.Forecasts;
using Progression.Records.Plans;
using Progression.Records.Storage;
using Progression.Records.Tests.Plans;
using Progression.Records.Tests.Storage;

namespace Progression.Records.Tests.Caseload;

/// <summary>Reassessments and logged sessions on a real store.</summary>
public sealed class ReassessmentSaveTests : IDisposable
{
    private static readonly (Case Case, PlanRevision Plan) Made = InventedPlans.One();
    private readonly TempFolder _folder = new();

    public ReassessmentSaveTests() => Assert.IsType<SaveResult.Saved>(Book().Save(Made.Case, Made.Plan, null));

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Case_plan_and_forecasts_are_saved_together_and_opened_again()
    {
        OpenedCase before = Opened();
        (Case now, ImmutableArray<KeptForecast> kept) = Visit(before, 14, 84);

        SaveResult.Saved saved = Assert.IsType<SaveResult.Saved>(Book().SaveReassessment(now, Moved(), kept, before));

        Assert.Equal([(RecordKind.Case, 2), (RecordKind.Plan, 2), (RecordKind.Forecasts, 1)], saved.Stamps.Select(stamp => (stamp.Kind, stamp.Revision)));
        OpenedCase after = Opened();
        Assert.Equal(CaseJson.Write(now), CaseJson.Write(after.Case));
        Assert.Equal(PlanJson.Write(Moved()), PlanJson.Write(after.Plan!));
        Assert.Equal(ForecastJson.Write(kept), ForecastJson.Write(after.Forecasts));
        Assert.NotEmpty(after.Forecasts);
        Assert.Equal(saved.Stamps[2], after.ForecastsStamp);
    }

    [Fact]
    public void It_survives_the_loss_of_the_index_and_a_rebuild()
    {
        (Case now, ImmutableArray<KeptForecast> kept) = Visit(Opened(), 14, 84);
        Book().SaveReassessment(now, Moved(), kept, Opened());
        string forecasts = ForecastJson.Write(kept);

        File.Delete(Path.Combine(_folder.Path, "plans.db"));
        Assert.Equal(forecasts, ForecastJson.Write(Opened().Forecasts));

        Store().Rebuild();
        Assert.Equal((CaseJson.Write(now), forecasts), (CaseJson.Write(Opened().Case), ForecastJson.Write(Opened().Forecasts)));
        Assert.Empty(Store().Verify().Problems);
    }

    [Fact]
    public void A_case_without_kept_forecasts_opens_with_none()
    {
        Assert.Empty(Opened().Forecasts);
        Assert.Null(Opened().ForecastsStamp);
    }

    [Fact]
    public void Where_somebody_saved_first_nothing_of_it_is_saved_and_nothing_is_lost()
    {
        OpenedCase mine = Opened();
        OpenedCase theirs = Opened();
        Assert.IsType<SaveResult.Saved>(Book(Sample.Supervisor).Save(theirs.Case.With(new SessionLog(new DateOnly(2026, 2, 6), 15)), theirs));
        (Case now, ImmutableArray<KeptForecast> kept) = Visit(mine, 14, 84);

        SaveResult.NotSaved refused = Assert.IsType<SaveResult.NotSaved>(Book().SaveReassessment(now, Moved(), kept, mine));

        Assert.Equal(Refusal.TryLater, refused.Kind);
        Assert.StartsWith("Somebody saved first: case revision 2 by Kim Sample", refused.Why, StringComparison.Ordinal);
        OpenedCase stands = Opened();
        Assert.Equal((1, 0, 1), (stands.Case.Sessions.Count(session => session.Contractions == 15), stands.Forecasts.Length, stands.PlanStamp!.Revision));

        (Case again, kept) = Visit(stands, 14, 84);
        Assert.IsType<SaveResult.Saved>(Book().SaveReassessment(again, Moved(), kept, stands));
        Assert.Equal(1, Opened().Case.Sessions.Count(session => session.Contractions == 15));
    }

    [Fact]
    public void A_logged_session_makes_a_revision_of_the_case_alone()
    {
        OpenedCase opened = Opened();

        SaveResult.Saved saved = Assert.IsType<SaveResult.Saved>(Book().Save(opened.Case.With(new SessionLog(new DateOnly(2026, 2, 6), 15)), opened));

        Assert.Equal((2, 2, 1), (saved.Case.Revision, Opened().CaseStamp.Revision, Opened().PlanStamp!.Revision));
        Assert.Throws<InvalidOperationException>(() => saved.Plan);
        Assert.Equal("2026-02-06", Book().List(new CaseQuery()).Rows[0].Fields[CaseSummary.LastSession]);
    }

    // 30 scored forecasts: reference, part 4.4, point 5.
    [Fact]
    public void The_hit_rate_is_counted_over_the_list_and_told_from_thirty_scored_forecasts_on()
    {
        for (int visit = 1; visit <= 8; visit++)
        {
            OpenedCase from = Opened();
            (Case now, ImmutableArray<KeptForecast> kept) = Visit(from, 7 * visit, 74 + (4 * visit));
            Assert.IsType<SaveResult.Saved>(Book().SaveReassessment(now, Moved(visit), kept, from));
        }

        ForecastScore[] scores = [.. Opened().Forecasts.Select(kept => kept.Score).OfType<ForecastScore>()];
        HitRate rate = Book().HitRate(InventedPlans.Library);
        Assert.NotEmpty(scores);
        Assert.Equal((scores.Length, scores.Count(score => score.Inside)), (rate.Scored, rate.Hits));
        Assert.Equal(scores.Length >= 30, rate.Words is not null);
        Assert.Null(HitRate.Of(29, 29, InventedPlans.Library).Words);
        Assert.True(HitRate.Of(30, 20, InventedPlans.Library) is { Words: not null, Warns: true });
        Assert.False(HitRate.Of(30, 21, InventedPlans.Library).Warns);
    }

    [Fact]
    public void A_store_without_reassessments_has_no_hit_rate_yet()
    {
        HitRate rate = Book().HitRate(InventedPlans.Library);

        Assert.Equal((0, 0, null), (rate.Scored, rate.Hits, rate.Words));
    }

    private static (Case Now, ImmutableArray<KeptForecast> Kept) Visit(OpenedCase from, int day, double flexion)
    {
        DateOnly date = from.Case.Operation.Date.AddDays(day);
        Reading[] readings = [new(MeasureIds.FlexionActive, flexion), new(MeasureIds.ExtensionPassive, 6), new(MeasureIds.ExtensionActive, 12)];
        Case now = from.Case.With(new Assessment(
            date, readings.ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal), ImmutableSortedDictionary<string, Answer>.Empty));
        return (now, ForecastLedger.After(from.Forecasts, now, InventedPlans.Library, date));
    }

    private static PlanRevision Moved(int target = 1) => PlanEdit.Set(Made.Plan, new CellAddress("flexion", 5), new TargetCell(100 + target), "reassessed");

    private OpenedCase Opened() => Book().Open(Made.Case.Code)!;

    private LiteDbPlanStore Store() => new(new StoreOptions(_folder.Path, CaseSummary.Of));

    private CaseBook Book(Actor? by = null) => new(Store(), Sample.Alone(by), new FixedClock(Sample.Monday));
}
