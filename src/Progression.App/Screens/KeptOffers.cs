using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Assess;
using Progression.App.Flags;
using Progression.App.Grid;
using Progression.App.Intake;
using Progression.App.Logs;
using Progression.App.Propose;
using Progression.App.Stores;
using Progression.App.Trying;
using Progression.Core.Entry;
using Progression.Core.Plans;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>What earlier sessions kept of a case, as the grid offers it. What changes nothing any more is dropped without a question.</summary>
internal static class KeptOffers
{
    private const string Day = "date"; // Kept with every visit and session, also where it was not typed.

    public static ImmutableArray<DraftOffer> Of(OpenStore store, OpenedCase opened, StoredPlan room)
    {
        ImmutableArray<DraftOffer>.Builder offers = ImmutableArray.CreateBuilder<DraftOffer>();
        // The plan first: a session log is filled in from it.
        foreach (FoundDraft found in room.Found.Drafts.OrderBy(draft => draft.Plan is null))
        {
            if (found.Form?.Form == ProposeDraft.FormName && (room.FoundForm("assessment") ?? room.FoundForm("correction")) is not null)
            {
                continue; // It is taken up when the assessment comes to its proposal.
            }

            string kept = Kept(store, found);
            DraftOffer? offer = found.Plan is { } plan ? Plan(store, opened, plan, new DraftOffer(found.File, "changes to the plan", kept))
                : Form(store, opened, found.Form!, new DraftOffer(found.File, What(found.Form!), kept));
            if (offer is null)
            {
                room.Forget(found.File);
            }
            else
            {
                offers.Add(offer);
            }
        }

        return offers.ToImmutable();
    }

    private static DraftOffer? Plan(OpenStore store, OpenedCase opened, KeptDraft draft, DraftOffer bare)
    {
        bool current = draft.BasedOn == opened.PlanStamp?.Reference;
        PlanRevision? from = current ? opened.Plan : draft.BasedOn is { } based ? From(store, opened, based) : null;
        string since = current ? ""
            : from is null ? "What it was made from is not in the store, so each cell that differs has to be chosen."
            : $"It was made from revision {draft.BasedOn!.Revision}; revision {opened.PlanStamp!.Revision} by {opened.PlanStamp.By.Name} has been saved since and stays.";
        return PlanMerge.Of(from, draft.Plan, opened.Plan!).IsEmpty ? null : bare with { Plan = draft.Plan, From = from, Since = since };
    }

    private static PlanRevision? From(OpenStore store, OpenedCase opened, RevisionRef based)
    {
        try
        {
            return store.Book.Plan(opened.Case.Code, based);
        }
        catch (Exception fault) when (fault is StoreException or FormatException)
        {
            return null;
        }
    }

    private static DraftOffer? Form(OpenStore store, OpenedCase opened, KeptForm kept, DraftOffer bare)
    {
        if (kept.Form == ProposeDraft.FormName)
        {
            return null; // Without its assessment there is nothing to decide on.
        }

        ImmutableArray<DraftText> lines =
        [
            .. (kept.Form switch
            {
                "assessment" or "correction" => AssessDraft.Lines(AssessDraft.Restored(AssessDesk.For(opened.Case, store.Library, store.Today), kept)),
                LogDraft.FormName => LogDraft.Lines(LogDraft.Restored(new(opened.Case, opened.Plan, store.Library, store.Today), kept)),
                FlagDraft.FormName => FlagDraft.Lines(FlagDraft.Restored(FlagDesk.For(opened.Case, store.Library, store.Today), kept)),
                IntakeDraft.OfCase => IntakeDraft.Lines(IntakeDraft.Restored(new IntakeDesk { Library = store.Library, Today = store.Today, Case = opened.Case, Plan = opened.Plan }, kept)),
                ScreeningDraft.FormName => ScreeningDraft.Lines(ScreeningDraft.Restored(ScreeningState.Open(opened.Case, store.Library, store.Today), kept)),
                CellDraft.FormName when opened.Plan is { } plan => CellDraft.Lines(plan, store.Library, kept),
                TryDraft.FormName when opened.Plan is { } plan => Tried(GridState.Open(PlanDesk.For(opened.Case, store.Library, store.Today), plan), kept),
                _ => kept.Fields.Select(field => (Place: field.Key, Before: "", Draft: field.Value)),
            }).Select(line => Safe(line.Place, line.Before, line.Draft)),
        ];
        // A text whose line is gone, such as an exercise no longer planned, is still shown.
        ImmutableArray<DraftText> bereft = kept.Form is FlagDraft.FormName or ScreeningDraft.FormName ? [] : [.. kept.Fields.Where(field => field.Key != Day).Select(field => Safe(field.Key, "", field.Value))];
        return !lines.IsEmpty ? bare with { Lines = lines } : !bereft.IsEmpty ? bare with { Lines = bereft } : null;
    }

    private static IEnumerable<(string Place, string Before, string Draft)> Tried(GridState grid, KeptForm kept) => TryDraft.Restored(grid, kept) is { } tried ? TryDraft.Lines(tried) : [];

    private static string What(KeptForm kept) => kept.Form switch
    {
        "assessment" => "an assessment",
        "correction" => "a correction of an assessment",
        LogDraft.FormName => "a session log",
        FlagDraft.FormName => "answers to the red flags",
        IntakeDraft.OfCase => "the data of the case",
        ScreeningDraft.FormName => "answers to the screening",
        CellDraft.FormName => "a half-typed line",
        TryDraft.FormName => "what was tried in a what-if",
        _ => SafeText.OneLine($"a form \"{kept.Form}\""),
    };

    private static string Kept(OpenStore store, FoundDraft found)
    {
        DateTime at = TimeZoneInfo.ConvertTime(found.At, store.Clock.LocalTimeZone).DateTime;
        string day = DateOnly.FromDateTime(at) == store.Today ? "today" : at.ToString("'on' yyyy-MM-dd", CultureInfo.InvariantCulture);
        DraftSession here = store.Drafts.Session;
        string where = found.Session.IsSameProcess(here) ? "earlier in this session"
            : found.Session.Host == here.Host ? $"by {found.Session.Name} in a session that has ended"
            : $"by {found.Session.Name} on the machine {found.Session.Host}, where that session may still go on";
        return SafeText.OneLine(string.Create(CultureInfo.InvariantCulture, $"Kept {day} at {at:HH:mm}, {where}."));
    }

    private static DraftText Safe(string place, string before, string draft) => new(SafeText.OneLine(place), SafeText.OneLine(before), SafeText.OneLine(draft));
}
