using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Chart;
using Progression.App.Compare;
using Progression.App.Flags;
using Progression.App.Grid;
using Progression.App.Imports;
using Progression.App.Intake;
using Progression.App.Logs;
using Progression.App.Stores;
using Progression.App.Trying;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Screens;

/// <summary>The case was saved with something new in it; told to the grid.</summary>
/// <param name="Patient">The case now.</param>
/// <param name="Plan">The plan that was saved with it; null where it stayed as it was.</param>
/// <param name="Told">What came of it, as a sentence.</param>
public sealed record CaseSaved(Case Patient, PlanRevision? Plan, string Told) : ScreenEffect
{
    /// <summary>The form that is finished with it; empty for none.</summary>
    public string Finished { get; init; } = "";
}

/// <summary>The scratch grid was left; told to the try-out.</summary>
/// <param name="Plan">Its plan, with the doses changed by hand.</param>
public sealed record ScratchLeft(PlanRevision Plan) : ScreenEffect;

/// <summary>The try-out was left; told to the grid.</summary>
public sealed record TryLeft : ScreenEffect;

/// <summary>What is opened from the grid of one case, and what comes back from there. Forms that were left half done wait here until the case is left.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
/// <param name="unfinished">An assessment that waits from before; null for none.</param>
public sealed class CaseDoors(StoredPlan room, OpenStore store, AssessState? unfinished = null)
{
    /// <summary>What a visit that waits is called.</summary>
    internal const string TheAssessment = "the assessment";

    private readonly CaseRoom _data = new(room, store);
    private readonly ReviewDoor _review = new(room);
    private AssessState? _assessment = unfinished;
    private LogState? _session;
    private FlagListState? _flags;
    private FormSlot? _slot = Kept(room, unfinished);
    private FormSlot? _tries;

    /// <summary>What was chosen on a proposal that was left undecided; null for nothing.</summary>
    internal KeptForm? Choices { get; set; }

    /// <summary>Does an effect of the grid that leads to another screen, or takes what was told from there; null for any other effect.</summary>
    public Turn<GridState>? Open(GridState grid, ScreenEffect effect)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return effect switch
        {
            Grid.Assess assess => Turn.Open(grid with { Status = "" }, Assessing(grid, Assessment(assess.Correct))),
            LogSession => Turn.Open(grid with { Status = "" }, Logging(Session(grid))),
            ShowFlags => Turn.Open(grid with { Status = "" }, Flagging(Flags())),
            OpenKeptForm kept => Kept(grid, kept.Id),
            CompareMeasures => Turn.Open(grid with { Status = "" }, Comparing(room.Case, grid.Lane.Measure)),
            ShowCourse course => Turn.Open(grid with { Status = "" }, Charting(grid.Desk.Case, course.Measure)),
            TryOut => Trying(grid, TryState.Open(grid)),
            TryLeft => Turn.Stay(_tries?.Close(null) is { } problem ? grid with { Status = $"The draft could not be dropped: {problem}" } : grid),
            LookUp look => Turn.Open(grid with { Status = "" }, LibraryDoor.Open(store.Library, look.Entry)),
            ShowPapers papers => Turn.Open(grid with { Status = "" }, new PapersDoor(room, store).Open(papers.Week)),
            ImportFromFile import => Turn.Open(grid with { Status = "" }, new ImportDoor(room, store).Open(import.Plan)),
            CellsBroughtIn cells => Turn.Stay(Kept(GridEdits.Change(grid, cells.Plan, "cells brought in from a file"), cells.Told)),
            ChangeData => Turn.Open(grid with { Status = "" }, _data.Data()),
            ShowScreening => Turn.Open(grid with { Status = "" }, _data.Screening()),
            DraftAnew anew => Redrafted(grid, anew.Plan),
            IntakeLeft or ScreeningLeft => Turn.Stay(Left(grid, _data.Left(effect))),
            CaseSaved saved => Turn.Stay(Taken(grid, saved)),
            AssessmentLeft left => Turn.Stay(Left(grid, (_assessment = left.Typed ?? _assessment) is not null, (TheAssessment, "a"), left.Typed is { } typed ? AssessDraft.Of(typed) : null)),
            SessionLeft left => Turn.Stay(Left(grid, (_session = left.Typed) is not null, ("the session", "s"), left.Typed is { } typed ? LogDraft.Of(typed) : null)),
            FlagsLeft left => Turn.Stay(Left(
                Taken(grid, new CaseSaved(room.Case, null, "")), (_flags = left.Answered) is not null, ("the answers to the red flags", "r"), left.Answered is { } answered ? FlagDraft.Of(answered) : null)),
            _ => _review.Open(grid, effect),
        };
    }

    /// <summary>The plan drafted anew as a change of the grid: it can be undone, and is saved by hand.</summary>
    private Turn<GridState> Redrafted(GridState grid, PlanRevision standing)
    {
        Entered<PlanRevision> fresh = _data.Anew(standing);
        if (fresh.Value is not { } plan)
        {
            return Turn.Stay(grid with { Status = fresh.Problems[0].ToString() });
        }

        return Turn.Stay(Kept(GridEdits.TakeAnew(grid, plan)));
    }

    /// <summary>The grid after a step that another screen led to, its draft kept.</summary>
    private GridState Kept(Step<GridState> taken, string? told = null)
    {
        string? kept = taken.Effects.OfType<KeepDraft>().Select(keep => room.Keeper.KeepDraft(keep.Plan)).FirstOrDefault();
        return kept is null
            ? taken.State with { DraftProblem = null, Status = told ?? taken.State.Status }
            : taken.State with { DraftProblem = kept, Status = $"The draft could not be kept: {kept}" };
    }

    /// <summary>The chart of a case.</summary>
    internal Frame Charting(Case patient, string measure)
    {
        DateOnly day = patient.Assessments.IsEmpty ? patient.Operation.Date : patient.Assessments[^1].Date;
        ImmutableSortedDictionary<string, ForecastAnswer> forecasts = Forecasting.All(patient, store.Library, day);
        return new Frame<ChartState>(ChartScreen.Definition, ChartState.Open(ChartDesk.For(patient, store.Library, (Comparison.Of(patient, store.Library), forecasts), store.Today), measure));
    }

    /// <summary>The comparison of a case; it leads on to the chart.</summary>
    internal Frame Comparing(Case patient, string? measure = null) =>
        new Frame<CompareState>(CompareScreen.Definition, CompareState.Open(patient, Comparison.Of(patient, store.Library), measure))
        {
            Perform = (state, effect) => effect is ShowChart chart ? Turn.Open(state, Charting(patient, chart.Measure)) : Turn.Stay(state),
        };

    // A form that waited goes on with the case as it is now: what was saved meanwhile is not written over.
    private AssessState Assessment(bool correct)
    {
        AssessDesk desk = AssessDesk.For(room.Case, store.Library, store.Today);
        AssessState start = (correct ? null : _assessment?.On(desk)) ?? AssessState.Open(desk, correct ? room.Case.Assessments[^1].Date : null);
        _assessment = correct ? _assessment : null;
        return start;
    }

    private LogState Session(GridState grid)
    {
        LogDesk desk = new(room.Case, grid.Plan, store.Library, store.Today);
        LogState start = _session is null ? LogState.Open(desk) : _session with { Desk = desk };
        _session = null;
        return start;
    }

    private FlagListState Flags()
    {
        FlagDesk desk = FlagDesk.For(room.Case, store.Library, store.Today);
        FlagListState start = _flags?.On(desk) ?? FlagListState.Open(desk);
        _flags = null;
        return start;
    }

    private Frame<AssessState> Assessing(GridState grid, AssessState start)
    {
        FormSlot slot = _slot = room.Slot(AssessDraft.FormOf(start));
        ProposalDoor proposal = new(room, store, this);
        return new Frame<AssessState>(AssessScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(AssessDraft.Of(state)),
            Perform = (state, effect) => effect switch
            {
                AssessmentReady ready => Turn.Open(state, proposal.Open(grid.Plan, ready)),
                CaseSaved saved => Turn.Leave(state, Done(saved, slot, TheAssessment)),
                _ => Turn.Stay(state),
            },
        };
    }

    private Frame<LogState> Logging(LogState start)
    {
        FormSlot slot = _slot = room.Slot(LogDraft.FormName);
        return new Frame<LogState>(LogScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(LogDraft.Of(state)),
            Perform = (state, effect) => effect is not SessionReady ready ? Turn.Stay(state)
                : room.SaveCase(ready.Patient) is { } problem ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                : Turn.Leave(state, Done(new CaseSaved(room.Case, null, $"The session of {ready.Session.Date:yyyy-MM-dd} is logged.{room.Joined}"), slot, "the session")),
        };
    }

    private Frame<FlagListState> Flagging(FlagListState start)
    {
        FormSlot slot = _slot = room.Slot(FlagDraft.FormName);
        return new Frame<FlagListState>(FlagScreen.Definition, start)
        {
            KeepWork = state => slot.Keep(FlagDraft.Of(state)),
            Perform = (state, effect) => effect switch
            {
                FlagsAnswered answered => room.SaveCase(answered.Patient) is { } problem
                    ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                    : Turn.Leave(state, Done(new CaseSaved(room.Case, null, $"The answers to the red flags are saved.{room.Joined}"), slot, "the answers to the red flags")),
                FlagClosed closed => Turn.Stay(room.SaveCase(closed.Patient) is { } problem
                    ? state with { Status = $"Not saved: {problem}" }
                    : FlagListState.Open(state.Desk with { Case = room.Case }) with { Index = state.Index, Status = $"The note is saved.{room.Joined}" }),
                _ => Turn.Stay(state),
            },
        };
    }

    /// <summary>A form that an earlier session left half typed, as it was; what was kept of it goes once this session has it on disk.</summary>
    private Turn<GridState> Kept(GridState grid, string id)
    {
        KeptForm? kept = room.Found.Drafts.FirstOrDefault(draft => draft.File == id)?.Form;
        if (kept?.Form == CellDraft.FormName)
        {
            GridState typing = CellDraft.Restored(grid, kept);
            string? notKept = room.Keeper.KeepLine(CellDraft.Of(typing)) ?? room.Forget(id);
            return Turn.Stay(notKept is null ? typing : typing with { Status = $"The draft could not be kept: {notKept}" });
        }

        if (kept is null || Restored(grid, kept) is not { } frame)
        {
            return Turn.Stay(grid with { Status = "This program does not know that form; it stays kept." });
        }

        string? problem = frame.Keep() ?? room.Forget(id);
        if (grid.IsUnsaved && frame is Frame<AssessState> assessing)
        {
            // As with a new assessment: what it changes is proposed over a plan that is saved.
            _assessment = assessing.State;
            GridState waiting = Left(grid, waits: true, (TheAssessment, "a"), AssessDraft.Of(assessing.State));
            return Turn.Stay(waiting with { Status = "The assessment is recovered and waits: save the plan (Ctrl+S), then a goes on with it." });
        }

        return Turn.Open(grid with { Status = "" }, problem is null ? frame : frame.Tell($"The draft could not be kept: {problem}"));
    }

    private static FormSlot? Kept(StoredPlan room, AssessState? unfinished)
    {
        FormSlot? slot = unfinished is null ? null : room.Slot(AssessDraft.FormOf(unfinished));
        slot?.Keep(AssessDraft.Of(unfinished!));
        return slot;
    }

    private Frame? Restored(GridState grid, KeptForm kept) => kept.Form switch
    {
        "assessment" or "correction" => Assessing(grid, AssessDraft.Restored(AssessDesk.For(room.Case, store.Library, store.Today), kept)),
        LogDraft.FormName => Logging(LogDraft.Restored(new(room.Case, grid.Plan, store.Library, store.Today), kept)),
        FlagDraft.FormName => Flagging(FlagDraft.Restored(FlagDesk.For(room.Case, store.Library, store.Today), kept)),
        IntakeDraft.OfCase => _data.Data(kept),
        ScreeningDraft.FormName => _data.Screening(kept),
        TryDraft.FormName => TryDraft.Restored(grid, kept) is { } tried ? TryingFrame(tried) : null,
        _ => null,
    };

    private Turn<GridState> Trying(GridState grid, TryState? start) => start is null
        ? Turn.Stay(grid with { Status = "There is no assessment yet whose readings could be tried: a enters one." })
        : Turn.Open(grid with { Status = "" }, TryingFrame(start));

    /// <summary>The try-out. It is kept only against a session that ends from outside; leaving it drops what was tried.</summary>
    private Frame<TryState> TryingFrame(TryState start)
    {
        FormSlot slot = _tries = room.Slot(TryDraft.FormName);
        bool walks = false;
        return new Frame<TryState>(TryScreen.Definition, start)
        {
            // While the scratch grid is walked, that one keeps both.
            KeepWork = state => Volatile.Read(ref walks) ? null : slot.Keep(TryDraft.Of(state)),
            Parting = _ => new TryLeft(),
            Perform = (state, effect) =>
            {
                Volatile.Write(ref walks, effect is WalkScratch);
                return effect switch
                {
                    WalkScratch walk => Turn.Open(state, Scratch(walk.Grid, plan => slot.Keep(TryDraft.Of(state.WithDoses(plan))))),
                    ScratchLeft left => Turn.Stay(state.WithDoses(left.Plan)),
                    _ => Turn.Stay(state),
                };
            },
        };
    }

    /// <summary>A grid of which nothing is saved: what it asks to save or keep is not done.</summary>
    private Frame<GridState> Scratch(GridState grid, Func<PlanRevision, string?> keep) => new(GridScreen.Definition, grid)
    {
        KeepWork = state => keep(state.Plan),
        Perform = (state, effect) => effect switch
        {
            ShowCourse course => Turn.Open(state, Charting(state.Desk.Case, course.Measure)),
            LookUp look => Turn.Open(state, LibraryDoor.Open(store.Library, look.Entry)),
            _ => Turn.Stay(state),
        },
        Parting = state => new ScratchLeft(state.Plan),
    };

    /// <summary>A form was left: what was typed is on disk and waits, or is dropped when nothing was.</summary>
    private GridState Left(GridState grid, bool waits, (string Form, string Key) what, KeptForm? typed)
    {
        return Left(grid, (what, waits, _slot?.Close(typed)));
    }

    private static GridState Left(GridState grid, ((string Form, string Key) What, bool Waits, string? Problem) left)
    {
        ((string Form, string Key) what, bool waits, string? problem) = left;
        GridState on = grid with { Waiting = waits ? grid.Waiting.Add(what.Form) : grid.Waiting.Remove(what.Form) };
        return problem is not null ? on with { Status = $"The draft could not be kept: {problem}" }
            : waits ? on with { Status = $"Not finished, and kept: {what.Form}; {what.Key} goes on with it." } : on;
    }

    internal static CaseSaved Done(CaseSaved saved, FormSlot slot, string form) =>
        slot.Close(null) is { } problem ? saved with { Finished = form, Told = $"{saved.Told} Its draft could not be dropped: {problem}" } : saved with { Finished = form };

    /// <summary>The grid on the case as it is now; a plan saved with it takes the place of the one before.</summary>
    private GridState Taken(GridState grid, CaseSaved saved)
    {
        GridState on = grid with { Desk = PlanDesk.For(saved.Patient, grid.Desk.Library, grid.Desk.Today), Status = saved.Told, Waiting = grid.Waiting.Remove(saved.Finished) };
        return saved.Plan is { } plan
            ? _review.With(on.WithPlan(plan) with { Saved = plan, Done = [], Undone = [], DraftProblem = null })
            : on.WithPlan(on.Plan);
    }
}
