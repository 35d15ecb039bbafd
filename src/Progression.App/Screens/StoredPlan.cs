using System.Collections.Immutable;
using Progression.App.Grid;
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
public sealed partial class StoredPlan
{
    private readonly OpenStore _store;
    private readonly DraftShelf _shelf;
    private readonly Lock _gate = new();
    private readonly FormSlot _line;
    private OpenedCase _opened;
    private PlanRevision? _wanted;
    private PlanRevision? _onDisk;

    /// <summary>Starts to keep a case.</summary>
    /// <param name="store">The store.</param>
    /// <param name="opened">The case as it was opened.</param>
    public StoredPlan(OpenStore store, OpenedCase opened)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(opened);
        (_store, _opened, _shelf) = (store, opened, store.Drafts.Opened());
        _line = Slot(CellDraft.FormName);
    }

    /// <summary>Save, keep and drop, as the grid asks for them.</summary>
    public PlanKeeper Keeper => new() { Save = Save, Meet = Meet, Review = Review, KeepDraft = KeepDraft, DropDraft = DropDraft, KeepAgain = KeepAgain, KeepLine = _line.Keep, CloseLine = _line.Close, Forget = Forget };

    /// <summary>What earlier sessions kept of the case, as it was found when it was opened.</summary>
    public FoundDrafts Found { get; private set; } = new([], [], 0);

    /// <summary>Looks for what earlier sessions kept; gives null, or why that was not possible.</summary>
    public string? Look() => DraftDisk.Told(() => Found = _shelf.Find(_opened.Case.Code));

    /// <summary>Where a form of the case is kept while it is typed.</summary>
    public FormSlot Slot(string form) => new(_shelf, _opened.Case.Code, form);

    /// <summary>What an earlier session kept of a form; null for nothing.</summary>
    public FoundDraft? FoundForm(string form) => Found.Drafts.FirstOrDefault(draft => draft.Form?.Form == form);

    /// <summary>Drops a draft of an earlier session; gives null, or why it could not.</summary>
    public string? Forget(string id)
    {
        if (Found.Drafts.FirstOrDefault(draft => draft.File == id) is not { } found)
        {
            return null;
        }

        string? problem = DraftDisk.Told(() => _shelf.Discard(found));
        Found = problem is null ? Found with { Drafts = Found.Drafts.Remove(found) } : Found;
        return problem;
    }

    /// <summary>The case as it was saved last.</summary>
    public Case Case => _opened.Case;

    /// <summary>The revision of the case as it was saved last.</summary>
    public RevisionRef CaseRevision => _opened.CaseStamp.Reference;

    /// <summary>The plan as it was saved last; null when there is none.</summary>
    public PlanRevision? Plan => _opened.Plan;

    /// <summary>Saves the case with a plan that was drafted anew for it, in place of the one that stands.</summary>
    public string? SaveAnew(Case patient, PlanRevision plan) => Saved(() => _store.Book.Save(patient, plan, _opened), saved =>
    {
        _opened = _opened with { Case = patient, CaseStamp = saved.Case, Plan = plan, PlanStamp = saved.Plan };
        Own(saved.Plan);
        DropDraft();
    });

    /// <summary>Saves the case alone, with a session or a note in it; its plan stays as it is.</summary>
    public string? SaveCase(Case patient)
    {
        Joined = "";
        return Saved(() => _store.Book.Save(patient, _opened), saved => _opened = _opened with { Case = patient, CaseStamp = saved.Case }) is { } problem
            ? SaveJoined(patient, problem)
            : null;
    }

    /// <summary>Saves what a reassessment came to: the case, the plan with what was decided, and the forecasts made and scored; all or nothing.</summary>
    public string? SaveReassessment(Case patient, PlanRevision plan)
    {
        DateOnly assessed = patient.Assessments.IsEmpty ? patient.Operation.Date : patient.Assessments[^1].Date;
        // A visit that was kept under a wrong day has made and scored nothing on it.
        IEnumerable<DateOnly> gone = _opened.Case.Assessments.Select(visit => visit.Date).Except(patient.Assessments.Select(visit => visit.Date));
        ImmutableArray<KeptForecast> forecasts = ForecastLedger.After(gone.Aggregate(_opened.Forecasts, ForecastLedger.Without), patient, _store.Library, assessed);
        return Saved(() => _store.Book.SaveReassessment(patient, plan, forecasts, _opened), saved =>
        {
            _opened = _opened with
            {
                Case = patient,
                CaseStamp = saved.Case,
                Plan = plan,
                PlanStamp = saved.Plan,
                Forecasts = forecasts,
                ForecastsStamp = saved.Stamps.First(stamp => stamp.Kind == RecordKind.Forecasts),
            };
            Own(saved.Plan);
            DropDraft();
        });
    }

    private string? Save(PlanRevision plan) => Saved(() => _store.Book.Save(plan, _opened.PlanStamp?.Reference), saved =>
    {
        _opened = _opened with { Plan = plan, PlanStamp = saved.Plan };
        Own(saved.Plan);
        DropDraft(); // One that stays is the same as the saved plan, and is found to be so at the next opening.
    });

    private string? KeepDraft(PlanRevision plan)
    {
        lock (_gate)
        {
            _wanted = plan;
            return Put();
        }
    }

    private string? KeepAgain(PlanRevision plan)
    {
        lock (_gate)
        {
            return ReferenceEquals(plan, _wanted) ? Put() : null;
        }
    }

    private string? DropDraft()
    {
        lock (_gate)
        {
            (_wanted, _onDisk) = (null, null);
            return DraftDisk.Told(() => _shelf.Drop(_opened.Case.Code));
        }
    }

    private string? Put()
    {
        if (_wanted is not { } plan || ReferenceEquals(plan, _onDisk))
        {
            return null;
        }

        string? problem = DraftDisk.Told(() => _shelf.Keep(new KeptDraft(plan, _opened.PlanStamp?.Reference)));
        _onDisk = problem is null ? plan : _onDisk;
        return problem;
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
}
