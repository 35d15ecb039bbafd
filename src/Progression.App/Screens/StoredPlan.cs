using Progression.App.Stores;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>Keeps one plan of a store while the grid is open: each save is based on the one before, so that somebody else's save between is told, never overwritten.</summary>
public sealed class StoredPlan
{
    private readonly OpenStore _store;
    private readonly OpenedCase _opened;
    private RevisionRef? _basedOn;
    private bool _changed;

    /// <summary>Starts to keep a plan.</summary>
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

    private string? Save(PlanRevision plan)
    {
        try
        {
            switch (_store.Book.Save(plan, Volatile.Read(ref _basedOn)))
            {
                case SaveResult.Saved saved:
                    Volatile.Write(ref _basedOn, saved.Plan.Reference);
                    Told(() => _store.Drafts.Drop(plan.Code)); // A draft that stays is offered again as one of an older revision; the save stands.
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
