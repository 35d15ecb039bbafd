using Progression.App.Actions;
using Progression.App.Forms;
using Progression.App.Intake;
using Progression.App.Stores;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Plans;

namespace Progression.App.Screens;

/// <summary>The data and the screening of a case that is saved, opened from the grid or the list; a change is a new revision of the case.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
internal sealed class CaseRoom(StoredPlan room, OpenStore store)
{
    private const string Stands = "Saved. The plan stands as it was; R in the grid drafts it anew.";

    private FormTexts? _data;
    private FormTexts? _screening;

    /// <summary>The same case opened again; what waits goes with it.</summary>
    public CaseRoom On(StoredPlan again) => new(again, store) { _data = _data, _screening = _screening };

    /// <summary>The form of the case, with what was left half typed.</summary>
    public Frame Data()
    {
        IntakeState start = IntakeState.Open(new IntakeDesk { Library = store.Library, Today = store.Today, Case = room.Case, Plan = room.Plan });
        return new Frame<IntakeState>(IntakeScreen.Definition, _data is { } kept ? start with { Form = start.Form.With(kept) } : start)
        {
            Perform = (state, effect) => effect switch
            {
                CaseTyped typed => Save(state, typed),
                GoToScreening => new Turn<IntakeState>(state, [new Move.Leave(null), new Move.Open(Screening())]),
                _ => Turn.Stay(state),
            },
        };
    }

    /// <summary>The screening of the case, with what was left half answered.</summary>
    public Frame Screening()
    {
        ScreeningState start = ScreeningState.Open(room.Case, store.Library, store.Today);
        return new Frame<ScreeningState>(ScreeningScreen.Definition, _screening is { } kept ? start.With(kept) : start)
        {
            Perform = (state, effect) => effect is not ScreeningAnswered answered ? Turn.Stay(state)
                : room.SaveCase(answered.Patient) is { } problem ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                : Turn.Leave(state, new CaseSaved(answered.Patient, null, Stands)),
        };
    }

    /// <summary>Keeps what was left half done, and tells how to go on with it; null where nothing waits.</summary>
    public string? Waits(ScreenEffect left)
    {
        switch (left)
        {
            case IntakeLeft data:
                _data = data.Typed?.Form.Texts;
                return _data is null ? null : "The data of the case is not saved; i goes on with it while this case is open.";
            case ScreeningLeft answers:
                _screening = answers.Answered?.Texts;
                return _screening is null ? null : "The screening is not saved; S goes on with it while this case is open.";
            default:
                return null;
        }
    }

    /// <summary>The plan drafted anew, with no fewer weeks, from today over the one that stands; or why it cannot be.</summary>
    public Entered<PlanRevision> Anew(PlanRevision standing)
    {
        DateOnly from = standing.OpenFrom > store.Today ? standing.OpenFrom : store.Today;
        return Redraft.Of(standing, room.Case with { PlanFrom = from }, store.Library, new DraftOrder { Weeks = Math.Max(room.Case.Weeks ?? 0, standing.Weeks), Regimen = room.Case.Regimen ?? standing.Regimen });
    }

    private Turn<IntakeState> Save(IntakeState state, CaseTyped typed)
    {
        if (!typed.Anew)
        {
            return room.SaveCase(typed.Patient) is { } refused ? NotSaved(state, refused) : Turn.Leave(state, new CaseSaved(typed.Patient, null, Stands));
        }

        Entered<PlanRevision> drafted = PlanDraft.Draft(typed.Patient, store.Library);
        return drafted.Value is not { } plan ? NotSaved(state, drafted.Problems[0].ToString())
            : room.SaveAnew(typed.Patient, plan) is { } problem ? NotSaved(state, problem)
            : Turn.Leave(state, new CaseSaved(typed.Patient, plan, "Saved, with a plan drafted anew for it."));
    }

    private static Turn<IntakeState> NotSaved(IntakeState state, string why) => Turn.Stay(state with { Status = $"Not saved: {why}" });
}
