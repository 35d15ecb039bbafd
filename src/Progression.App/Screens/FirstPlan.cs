using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Forms;
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
    private const string NoScreening = "Screening skipped: stim stays barred (S in the grid). 3 of 3: first readings.";
    private const string FirstReadings = "3 of 3: first readings; Esc skips them, the plan then goes by the calendar.";
    private const string NoReadings = "No first readings: it goes by the calendar until a enters some.";

    private FormTexts? _waits;
    private CaseCode? _at;

    /// <summary>The form of a new case, with what was left half typed.</summary>
    /// <param name="taken">Codes that are in the list.</param>
    public Frame Begin(ImmutableHashSet<string> taken)
    {
        IntakeState start = IntakeState.Open(new IntakeDesk { Library = store.Library, Today = store.Today, Taken = taken });
        return new Frame<IntakeState>(IntakeScreen.Definition, _waits is { } kept ? start with { Form = start.Form.With(kept) } : start)
        {
            Perform = (state, effect) => effect is not CaseTyped typed ? Turn.Stay(state)
                : Save(typed.Patient, null) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, Screening(typed.Patient.Code)),
        };
    }

    /// <summary>Takes what was told by a step that was left, and goes on with the next; null for what is none of its own.</summary>
    public (Move.Open? Open, string? Told)? Hear(ScreenEffect effect)
    {
        switch (effect)
        {
            case IntakeLeft left:
                _waits = left.Typed?.Form.Texts;
                return (null, _waits is null ? "No case was made." : "The new case is not saved; n goes on with it while the list is open.");
            case ScreeningLeft when _at is { } code:
                return Readings(code, NoScreening);
            case AssessmentLeft left when _at is { } code:
                return Plan(code, left.Typed is null ? NoReadings : "The readings are not finished: a goes on with them.", left.Typed);
            default:
                return null;
        }
    }

    /// <summary>A case that has no plan yet, at the first step that was not done; null for one that has a plan or is not there.</summary>
    public (Move.Open? Open, string? Told)? Resume(CaseCode code) => store.Book.Open(code) is not { Plan: null } opened ? null
        : opened.Case.Screening.Answers.IsEmpty ? Screening(code)
        : opened.Case.Assessments.IsEmpty ? Readings(code, FirstReadings)
        : Plan(code, "");

    private (Move.Open? Open, string? Told) Screening(CaseCode code)
    {
        (_waits, _at) = (null, code);
        OpenedCase opened = store.Book.Open(code)!;
        ScreeningState start = ScreeningState.Open(opened.Case, store.Library, store.Today) with { IsStep = true, Status = "The case is saved. Esc skips what is not answered; stim stays barred then." };
        return (new Move.Open(new Frame<ScreeningState>(ScreeningScreen.Definition, start)
        {
            Perform = (state, effect) => effect is not ScreeningAnswered answered ? Turn.Stay(state)
                : Save(answered.Patient, opened) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, Readings(code, FirstReadings)),
        }), null);
    }

    private (Move.Open? Open, string? Told) Readings(CaseCode code, string told)
    {
        _at = code;
        OpenedCase opened = store.Book.Open(code)!;
        AssessState start = AssessState.Open(AssessDesk.For(opened.Case, store.Library, store.Today)) with { Status = told };
        return (new Move.Open(new Frame<AssessState>(AssessScreen.Definition, start)
        {
            Perform = (state, effect) => effect is not AssessmentReady ready ? Turn.Stay(state)
                : Save(ready.Patient, opened) is { } problem ? Turn.Stay(state with { Status = problem })
                : Next(state, Plan(code, "")),
        }), null);
    }

    /// <summary>Drafts and saves the plan and opens the grid on it.</summary>
    private (Move.Open? Open, string? Told) Plan(CaseCode code, string told, AssessState? unfinished = null)
    {
        _at = null;
        OpenedCase opened = store.Book.Open(code)!;
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

    private static Turn<TState> Next<TState>(TState state, (Move.Open? Open, string? Told) step) => step.Open is { } open
        ? new Turn<TState>(state, [new Move.Leave(null), open])
        : Turn.Leave(state, new ListLeft(step.Told ?? ""));
}
