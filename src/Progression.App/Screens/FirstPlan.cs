using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Intake;
using Progression.App.Stores;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>
/// The way from nothing to a first plan: the case, its screening, its first readings, the grid. Each step is saved before the next begins, and each but the
/// first can be skipped. A case that was left on the way goes on where it stopped.
/// </summary>
/// <param name="store">The store.</param>
/// <param name="grid">Opens the plan of a case, given what it tells at first and an assessment that waits; null with a sentence that says why there is none.</param>
internal sealed class FirstPlan(OpenStore store, Func<CaseCode, (string Told, AssessState? Unfinished), (Frame? Frame, string? Why)> grid)
{
    private const string SkipScreening = "The case is saved. Esc skips what is not answered; stim stays barred then.";
    private const string NoScreening = "Screening skipped: stim stays barred (S in the grid). 3 of 3: first readings.";
    private const string FirstReadings = "3 of 3: first readings; Esc skips them, the plan then goes by the calendar.";
    private const string NoReadings = "No first readings: it goes by the calendar until a enters some.";

    private readonly DraftShelf _shelf = store.Drafts.Opened();
    private KeptForm? _waits;
    private FormSlot? _slot;
    private CaseCode? _at;

    /// <summary>Tells of a new case that an earlier session left half typed; null for none.</summary>
    public string? Found => Kept(null, IntakeDraft.OfNew) is null ? null : "A new case was left half typed; n goes on with it.";

    /// <summary>The form of a new case, with what was left half typed.</summary>
    /// <param name="taken">Codes that are in the list.</param>
    public Frame Begin(ImmutableHashSet<string> taken)
    {
        FormSlot slot = _slot = new FormSlot(_shelf, null, IntakeDraft.OfNew);
        FoundDraft? found = _waits is null ? Kept(null, IntakeDraft.OfNew) : null;
        IntakeState start = IntakeDraft.Restored(new IntakeDesk { Library = store.Library, Today = store.Today, Taken = taken }, _waits ?? found?.Form);
        return TakenUp(found, new Frame<IntakeState>(IntakeScreen.Definition, found is null ? start : start with { Status = $"{start.Status} Ctrl+D empties the form." })
        {
            KeepWork = state => slot.Keep(IntakeDraft.Of(state)),
            Perform = (state, effect) => effect is not CaseTyped typed ? Turn.Stay(state)
                : Save(typed.Patient, null) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, slot, () => Screening(typed.Patient.Code)),
        });
    }

    /// <summary>Takes what was told by a step that was left, and goes on with the next; null for what is none of its own.</summary>
    public (Move.Open? Open, string? Told)? Hear(ScreenEffect effect)
    {
        switch (effect)
        {
            case IntakeLeft left:
                _waits = left.Typed is { } typed ? IntakeDraft.Of(typed) : null;
                return (null, Closed(_waits) ?? (_waits is null ? "No case was made." : "Not finished, and kept: the new case; n goes on with it."));
            case ScreeningLeft when _at is { } code:
                Closed(null);
                return Readings(code, NoScreening);
            case AssessmentLeft left when _at is { } code:
                Closed(null); // What was typed goes with the case, which keeps it from here on.
                return Plan(code, left.Typed is null ? NoReadings : "The readings are not finished: a goes on with them.", left.Typed);
            default:
                return null;
        }
    }

    /// <summary>A case that has no plan yet, at the first step that was not done; null for one that has a plan or is not there.</summary>
    public (Move.Open? Open, string? Told)? Resume(CaseCode code) => store.Book.Again(code) is not { Plan: null } opened ? null
        : opened.Case.Screening.Answers.IsEmpty ? Screening(code)
        : opened.Case.Assessments.IsEmpty ? Readings(code, FirstReadings)
        : Plan(code, "");

    private (Move.Open? Open, string? Told) Screening(CaseCode code)
    {
        (_waits, _at) = (null, code);
        OpenedCase opened = store.Book.Again(code)!;
        FormSlot slot = _slot = new FormSlot(_shelf, code, ScreeningDraft.FormName);
        FoundDraft? found = Kept(code, ScreeningDraft.FormName);
        ScreeningState start = ScreeningDraft.Restored(ScreeningState.Open(opened.Case, store.Library, store.Today), found?.Form) with { IsStep = true, Status = SkipScreening };
        return (new Move.Open(TakenUp(found, new Frame<ScreeningState>(ScreeningScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(ScreeningDraft.Of(state)),
            Perform = (state, effect) => effect is not ScreeningAnswered answered ? Turn.Stay(state)
                : Save(answered.Patient, opened) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, slot, () => Readings(code, FirstReadings)),
        })), null);
    }

    private (Move.Open? Open, string? Told) Readings(CaseCode code, string told)
    {
        _at = code;
        OpenedCase opened = store.Book.Again(code)!;
        AssessDesk desk = AssessDesk.For(opened.Case, store.Library, store.Today);
        FoundDraft? found = Kept(code, AssessDraft.FormOf(AssessState.Open(desk)));
        AssessState start = (found?.Form is { } kept ? AssessDraft.Restored(desk, kept) : AssessState.Open(desk)) with { Status = told };
        FormSlot slot = _slot = new FormSlot(_shelf, code, AssessDraft.FormOf(start));
        return (new Move.Open(TakenUp(found, new Frame<AssessState>(AssessScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(AssessDraft.Of(state)),
            Perform = (state, effect) => effect is not AssessmentReady ready ? Turn.Stay(state)
                : Save(ready.Patient, opened) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, slot, () => Plan(code, "")),
        })), null);
    }

    /// <summary>Drafts and saves the plan and opens the grid on it.</summary>
    private (Move.Open? Open, string? Told) Plan(CaseCode code, string told, AssessState? unfinished = null)
    {
        _at = null;
        OpenedCase opened = store.Book.Again(code)!;
        Entered<PlanRevision> drafted = PlanDraft.Draft(opened.Case, store.Library);
        if (drafted.Value is not { } plan)
        {
            return (null, $"The case is saved; its plan could not be drafted. {drafted.Problems[0]}");
        }

        if (StoredPlan.Saved(() => store.Book.Save(plan, null), _ => { }) is { } problem)
        {
            return (null, $"The case is saved, its plan is not: {problem}");
        }

        (Frame? frame, string? why) = grid(code, ($"Saved. {told}".TrimEnd(), unfinished));
        return frame is null ? (null, why) : (new Move.Open(frame), null);
    }

    private string? Save(Case patient, OpenedCase? from) => StoredPlan.Saved(() => store.Book.Save(patient, from), _ => { }) is { } problem ? $"Not saved: {problem}" : null;

    /// <summary>The newest that an earlier session kept of a form; null for none, and where the disk cannot be read.</summary>
    private FoundDraft? Kept(CaseCode? code, string form)
    {
        FoundDraft? found = null;
        DraftDisk.Told(() => found = _shelf.Find(code).Drafts.FirstOrDefault(draft => draft.Form?.Form == form));
        return found;
    }

    /// <summary>The screen with what was found in it: kept under this session first, and only then dropped under the earlier one.</summary>
    private Frame TakenUp(FoundDraft? found, Frame frame) =>
        found is not null && (frame.Keep() ?? DraftDisk.Told(() => _shelf.Discard(found))) is { } problem ? frame.Tell($"The draft could not be kept: {problem}") : frame;

    private string? Closed(KeptForm? typed) => _slot?.Close(typed) is { } problem ? $"The draft could not be kept: {problem}" : null;

    private static Turn<TState> Next<TState>(TState state, FormSlot done, Func<(Move.Open? Open, string? Told)> step)
    {
        done.Close(null);
        (Move.Open? open, string? told) = step();
        return open is not null ? new Turn<TState>(state, [new Move.Leave(null), open]) : Turn.Leave(state, new ListLeft(told ?? ""));
    }
}
