using System.Collections.Immutable;
using Progression.App.Stores;
using Progression.Core.Forecasts;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>
/// Keeps one case of a store while it is open: each save is based on the one before, so that somebody else's save between is told, never overwritten.
/// Every save gives null, or why it was not possible, as a sentence.
/// </summary>
public sealed class StoredPlan
{
    private readonly OpenStore _store;
    private OpenedCase _opened;
    private RevisionRef? _basedOn;
    private bool _changed;

    /// <summary>Starts to keep a case.</summary>
    /// <param name="store">The store.</param>
    /// <param name="opened">The case as it was opened.</param>
    /// <param name="draft">The draft found with it; unless it is dropped at once, saves are based on what it was made from.</param>
    public StoredPlan(OpenStore store, OpenedCase opened, KeptDraft? draft)
    {
        ArgumentNullException.ThrowIfNull(opened);
        (_store, _opened) = (store, opened);
        _basedOn = draft is null ? opened.PlanStamp?.Reference : draft.BasedOn;
    }

    /// <summary>Save, keep and drop, as the grid asks for them.</summary>
    public PlanKeeper Keeper => new() { Save = Save, KeepDraft = KeepDraft, DropDraft = DropDraft };

    /// <summary>The case as it was saved last.</summary>
    public Case Case => _opened.Case;

    /// <summary>The plan as it was saved last; null when there is none.</summary>
    public PlanRevision? Plan => _opened.Plan;

    /// <summary>Saves the case with a plan that was drafted anew for it, in place of the one that stands.</summary>
    public string? SaveAnew(Case patient, PlanRevision plan) => Saved(() => _store.Book.Save(patient, plan, _opened), saved =>
    {
        Volatile.Write(ref _basedOn, saved.Plan.Reference);
        _opened = _opened with { Case = patient, CaseStamp = saved.Case, Plan = plan, PlanStamp = saved.Plan };
    });

    /// <summary>Saves the case alone, with a session or a note in it; its plan stays as it is.</summary>
    public string? SaveCase(Case patient) => Saved(() => _store.Book.Save(patient, _opened), saved =>
        _opened = _opened with { Case = patient, CaseStamp = saved.Case });

    /// <summary>Saves what a reassessment came to: the case, the plan with what was decided, and the forecasts made and scored; all or nothing.</summary>
    public string? SaveReassessment(Case patient, PlanRevision plan)
    {
        DateOnly assessed = patient.Assessments.IsEmpty ? patient.Operation.Date : patient.Assessments[^1].Date;
        // A visit that was kept under a wrong day has made and scored nothing on it.
        IEnumerable<DateOnly> gone = _opened.Case.Assessments.Select(visit => visit.Date).Except(patient.Assessments.Select(visit => visit.Date));
        ImmutableArray<KeptForecast> forecasts = ForecastLedger.After(gone.Aggregate(_opened.Forecasts, ForecastLedger.Without), patient, _store.Library, assessed);
        return Saved(() => _store.Book.SaveReassessment(patient, plan, forecasts, _opened), saved =>
        {
            Volatile.Write(ref _basedOn, saved.Plan.Reference);
            _opened = _opened with
            {
                Case = patient,
                CaseStamp = saved.Case,
                Plan = plan,
                PlanStamp = saved.Plan,
                Forecasts = forecasts,
                ForecastsStamp = saved.Stamps.First(stamp => stamp.Kind == RecordKind.Forecasts),
            };
            Told(() => _store.Drafts.Drop(plan.Code));
        });
    }

    private string? Save(PlanRevision plan) => Saved(() => _store.Book.Save(plan, Volatile.Read(ref _basedOn)), saved =>
    {
        Volatile.Write(ref _basedOn, saved.Plan.Reference);
        _opened = _opened with { Plan = plan, PlanStamp = saved.Plan };
        Told(() => _store.Drafts.Drop(plan.Code)); // A draft that stays is offered again as one of an older revision; the save stands.
    });

    private string? KeepDraft(PlanRevision plan)
    {
        _changed = true;
        return Told(() => _store.Drafts.Keep(new KeptDraft(plan, Volatile.Read(ref _basedOn))));
    }

    private string? DropDraft()
    {
        // Once a draft was taken up it can come back by redo, so only one that was never taken up is forgotten.
        if (!_changed)
        {
            Volatile.Write(ref _basedOn, _opened.PlanStamp?.Reference);
        }

        return Told(() => _store.Drafts.Drop(_opened.Case.Code));
    }

    /// <summary>Saves, and does what follows from it; what the store cannot do now is a sentence.</summary>
    internal static string? Saved(Func<SaveResult> save, Action<SaveResult.Saved> then)
    {
        try
        {
            switch (save())
            {
                case SaveResult.Saved saved:
                    then(saved);
                    return null;
                case SaveResult.NotSaved refused:
                    return refused.Why;
                default:
                    throw new InvalidOperationException("A save has two outcomes.");
            }
        }
        catch (StoreException fault)
        {
            return fault.Message;
        }
    }

    private static string? Told(Action act)
    {
        try
        {
            act();
            return null;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return fault.Message;
        }
    }
}
