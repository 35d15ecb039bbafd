using Progression.App.Actions;
using Progression.App.Intake;
using Progression.App.Stores;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>The data and the screening of a case that is saved, opened from the grid or the list; a change is a new revision of the case.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
internal sealed class CaseRoom(StoredPlan room, OpenStore store)
{
    private const string TheData = "the data of the case";
    private const string TheScreening = "the screening";
    private const string Stands = "Saved. The plan stands as it was; R in the grid drafts it anew.";

    private KeptForm? _data;
    private KeptForm? _screening;
    private FormSlot? _slot;

    /// <summary>The same case opened again; what waits goes with it.</summary>
    public CaseRoom On(StoredPlan again) => new(again, store) { _data = _data, _screening = _screening };

    /// <summary>The form of the case, with what was left half typed.</summary>
    /// <param name="kept">What an earlier session kept of it; null takes what waits since it was left.</param>
    public Frame Data(KeptForm? kept = null)
    {
        FormSlot slot = _slot = room.Slot(IntakeDraft.OfCase);
        IntakeState start = IntakeDraft.Restored(new IntakeDesk { Library = store.Library, Today = store.Today, Case = room.Case, Plan = room.Plan }, kept ?? _data);
        return new Frame<IntakeState>(IntakeScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(IntakeDraft.Of(state)),
            Perform = (state, effect) => effect switch
            {
                CaseTyped typed => Save(state, typed, slot),
                GoToScreening => new Turn<IntakeState>(state, [new Move.Leave(null), new Move.Open(Screening())]),
                _ => Turn.Stay(state),
            },
        };
    }

    /// <summary>The screening of the case, with what was left half answered.</summary>
    /// <param name="kept">What an earlier session kept of it; null takes what waits since it was left.</param>
    public Frame Screening(KeptForm? kept = null)
    {
        FormSlot slot = _slot = room.Slot(ScreeningDraft.FormName);
        return new Frame<ScreeningState>(ScreeningScreen.Definition, ScreeningDraft.Restored(ScreeningState.Open(room.Case, store.Library, store.Today), kept ?? _screening))
        {
            KeepWork = state => slot.Keep(ScreeningDraft.Of(state)),
            Perform = (state, effect) => effect is not ScreeningAnswered answered ? Turn.Stay(state)
                : room.SaveCase(answered.Patient) is { } problem ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                : Turn.Leave(state, CaseDoors.Done(new CaseSaved(room.Case, null, Stands + room.Joined), slot, TheScreening)),
        };
    }

    /// <summary>A form of the case as it waits, or as an earlier session left it: kept under this one first, and only then dropped under the earlier one.</summary>
    /// <param name="form">Which form: the data or the screening.</param>
    public Frame AsLeft(string form)
    {
        bool data = form == IntakeDraft.OfCase;
        FoundDraft? found = (data ? _data : _screening) is null && room.Look() is null ? room.FoundForm(form) : null;
        Frame frame = data ? Data(found?.Form) : Screening(found?.Form);
        return found is not null && (frame.Keep() ?? room.Forget(found.File)) is { } problem ? frame.Tell($"The draft could not be kept: {problem}") : frame;
    }

    /// <summary>Keeps what was left half done.</summary>
    /// <param name="left">What was told on leaving.</param>
    /// <returns>Which form it is and the key that goes on with it, whether it waits, and why it could not be kept on disk.</returns>
    public ((string Form, string Key) What, bool Waits, string? Problem) Left(ScreenEffect left)
    {
        if (left is ScreeningLeft { Answered: var answered })
        {
            _screening = answered is null ? null : ScreeningDraft.Of(answered);
            return ((TheScreening, "S"), _screening is not null, _slot?.Close(_screening));
        }

        _data = left is IntakeLeft { Typed: { } typed } ? IntakeDraft.Of(typed) : null;
        return ((TheData, "i"), _data is not null, _slot?.Close(_data));
    }

    /// <summary>The plan drafted anew, with no fewer weeks, from today over the one that stands; or why it cannot be.</summary>
    public Entered<PlanRevision> Anew(PlanRevision standing)
    {
        DateOnly from = standing.OpenFrom > store.Today ? standing.OpenFrom : store.Today;
        return Redraft.Of(standing, room.Case with { PlanFrom = from }, store.Library, new DraftOrder { Weeks = Math.Max(room.Case.Weeks ?? 0, standing.Weeks), Regimen = room.Case.Regimen ?? standing.Regimen });
    }

    private Turn<IntakeState> Save(IntakeState state, CaseTyped typed, FormSlot slot)
    {
        if (!typed.Anew)
        {
            return room.SaveCase(typed.Patient) is { } refused ? NotSaved(state, refused) : Turn.Leave(state, CaseDoors.Done(new CaseSaved(room.Case, null, Stands + room.Joined), slot, TheData));
        }

        Entered<PlanRevision> drafted = PlanDraft.Draft(typed.Patient, store.Library);
        return drafted.Value is not { } plan ? NotSaved(state, drafted.Problems[0].ToString())
            : room.SaveAnew(typed.Patient, plan) is { } problem ? NotSaved(state, problem)
            : Turn.Leave(state, CaseDoors.Done(new CaseSaved(typed.Patient, plan, "Saved, with a plan drafted anew for it."), slot, TheData));
    }

    private static Turn<IntakeState> NotSaved(IntakeState state, string why) => Turn.Stay(state with { Status = $"Not saved: {why}" });
}
