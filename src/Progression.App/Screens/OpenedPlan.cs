using Progression.App.Grid;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>A plan taken from a store, ready for the grid.</summary>
/// <param name="Start">The state the grid begins with; it asks about kept drafts, and its status tells of damage.</param>
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

        StoredPlan room = new(store, opened);
        string? trouble = room.Look();
        List<string> told =
        [
            .. opened.Unnoted is null ? [] : new[] { opened.Unnoted },
            .. opened.Damage.Select(damage => $"The records are damaged: {damage}"),
            .. trouble is null ? [] : new[] { $"Kept drafts cannot be looked for: {trouble}" },
            .. room.Found.Unreadable,
            .. opened.Standing is { Return: not null } returned ? new[] { $"{SignatureWords.Review(returned)} o shows it." } : [],
            .. room.Found.InUse > 0 ? new[] { "Another session of yours has unsaved work on this case; it is left to that one." } : [],
        ];
        GridState start = GridState.Open(PlanDesk.For(opened.Case, store.Library, store.Today), plan, KeptOffers.Of(store, opened, room));
        return (new OpenedPlan(start with { Review = room.Review(), Status = string.Join(" ", told) }, room), null);
    }
}
