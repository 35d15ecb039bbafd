using Progression.App.Grid;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>A plan taken from a store, ready for the grid.</summary>
/// <param name="Start">The state the grid begins with; its status tells of damage and of a draft that is out of date.</param>
/// <param name="Room">Keeps the case, the plan and its draft.</param>
public sealed record OpenedPlan(GridState Start, StoredPlan Room)
{
    /// <summary>Where the plan and its draft are kept.</summary>
    public PlanKeeper Keeper => Room.Keeper;

    /// <summary>Opens the plan of a case, with the draft that was kept of it.</summary>
    /// <returns>The plan; null with a sentence that says why there is none.</returns>
    /// <exception cref="Progression.Records.Storage.StoreException">The store is busy, damaged or not permitted.</exception>
    /// <exception cref="FormatException">What is stored is not of this program's form.</exception>
    public static (OpenedPlan? Plan, string? Why) Of(OpenStore store, CaseCode code)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(code);
        OpenedCase? opened = store.Book.Open(code);
        if (opened?.Plan is not { } plan)
        {
            return (null, opened is null
                ? $"There is no case {code} in the store {store.Folder}."
                : $"The case {code} has no plan yet: \"progression draft FILE --save\" makes one.");
        }

        (KeptDraft? draft, string? unreadable) = Draft(store, code);
        List<string> told = [.. opened.Damage.Select(damage => $"The records are damaged: {damage}")];
        if (unreadable is not null)
        {
            told.Add(unreadable);
        }

        if (draft is not null && draft.BasedOn != opened.PlanStamp?.Reference)
        {
            told.Add($"The draft was made from revision {draft.BasedOn?.Revision.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "0"}; "
                + $"revision {opened.PlanStamp!.Revision} by {opened.PlanStamp.By.Name} has been saved since. It can be looked at, not saved.");
        }

        GridState start = GridState.Open(PlanDesk.For(opened.Case, store.Library, store.Today), plan, draft?.Plan);
        return (new OpenedPlan(start with { Status = string.Join(" ", told) }, new StoredPlan(store, opened, draft)), null);
    }

    /// <summary>The draft of a case; one that cannot be read is put aside, so that the next does not replace it.</summary>
    private static (KeptDraft?, string?) Draft(OpenStore store, CaseCode code)
    {
        try
        {
            return (store.Drafts.Find(code), null);
        }
        catch (Exception fault) when (fault is FormatException or IOException or UnauthorizedAccessException)
        {
            if (fault is FormatException)
            {
                store.Drafts.SetAside(code);
            }

            return (null, $"A kept draft cannot be read and was left aside: {fault.Message}");
        }
    }
}
