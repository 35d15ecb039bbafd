using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Chart;
using Progression.App.Compare;
using Progression.App.Flags;
using Progression.App.Grid;
using Progression.App.Intake;
using Progression.App.Logs;
using Progression.App.Stores;
using Progression.App.Trying;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Screens;

/// <summary>The case was saved with something new in it; told to the grid.</summary>
/// <param name="Patient">The case now.</param>
/// <param name="Plan">The plan that was saved with it; null where it stayed as it was.</param>
/// <param name="Told">What came of it, as a sentence.</param>
public sealed record CaseSaved(Case Patient, PlanRevision? Plan, string Told) : ScreenEffect;

/// <summary>The scratch grid was left; told to the try-out.</summary>
/// <param name="Plan">Its plan, with the doses changed by hand.</param>
public sealed record ScratchLeft(PlanRevision Plan) : ScreenEffect;

/// <summary>What is opened from the grid of one case, and what comes back from there. Forms that were left half done wait here until the case is left.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
/// <param name="unfinished">An assessment that waits from before; null for none.</param>
public sealed class CaseDoors(StoredPlan room, OpenStore store, AssessState? unfinished = null)
{
    private readonly CaseRoom _data = new(room, store);
    private AssessState? _assessment = unfinished;
    private LogState? _session;
    private FlagListState? _flags;

    /// <summary>Does an effect of the grid that leads to another screen, or takes what was told from there; null for any other effect.</summary>
    public Turn<GridState>? Open(GridState grid, ScreenEffect effect)
    {
        ArgumentNullException.ThrowIfNull(grid);
        return effect switch
        {
            Grid.Assess assess => Turn.Open(grid with { Status = "" }, Assessing(grid, assess.Correct)),
            LogSession => Turn.Open(grid with { Status = "" }, Logging(grid)),
            ShowFlags => Turn.Open(grid with { Status = "" }, Flagging()),
            CompareMeasures => Turn.Open(grid with { Status = "" }, Comparing(room.Case, grid.Lane.Measure)),
            ShowCourse course => Turn.Open(grid with { Status = "" }, Charting(grid.Desk.Case, course.Measure)),
            TryOut => Trying(grid),
            LookUp look => Turn.Open(grid with { Status = "" }, LibraryDoor.Open(store.Library, look.Entry)),
            ChangeData => Turn.Open(grid with { Status = "" }, _data.Data()),
            ShowScreening => Turn.Open(grid with { Status = "" }, _data.Screening()),
            DraftAnew anew => Redrafted(grid, anew.Plan),
            IntakeLeft or ScreeningLeft => Turn.Stay(grid with { Status = _data.Waits(effect) ?? grid.Status }),
            CaseSaved saved => Turn.Stay(Taken(grid, saved)),
            AssessmentLeft left => Turn.Stay(Waits(grid, (_assessment = left.Typed ?? _assessment) is not null, "The assessment is not finished; a goes on with it while this case is open.")),
            SessionLeft left => Turn.Stay(Waits(grid, (_session = left.Typed) is not null, "The session is not finished; s goes on with it while this case is open.")),
            FlagsLeft left => Turn.Stay(Waits(Taken(grid, new CaseSaved(room.Case, null, "")), (_flags = left.Answered) is not null, "The answers are not saved; r goes on with them while this case is open.")),
            _ => null,
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

        Step<GridState> taken = GridEdits.TakeAnew(grid, plan);
        string? kept = taken.Effects.OfType<KeepDraft>().Select(keep => room.Keeper.KeepDraft(keep.Plan)).FirstOrDefault();
        return Turn.Stay(kept is null ? taken.State with { DraftProblem = null } : taken.State with { DraftProblem = kept, Status = $"The draft could not be kept: {kept}" });
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

    private Frame<AssessState> Assessing(GridState grid, bool correct)
    {
        AssessDesk desk = AssessDesk.For(room.Case, store.Library, store.Today);
        DateOnly? visit = correct ? room.Case.Assessments[^1].Date : null;
        // A form that waited goes on with the case as it is now: what was saved meanwhile is not written over.
        AssessState start = (correct ? null : _assessment?.On(desk)) ?? AssessState.Open(desk, visit);
        _assessment = correct ? _assessment : null;
        ProposalDoor proposal = new(room, store, this);
        return new Frame<AssessState>(AssessScreen.Definition, start)
        {
            Perform = (state, effect) => effect switch
            {
                AssessmentReady ready => Turn.Open(state, proposal.Open(grid.Plan, ready)),
                CaseSaved saved => Turn.Leave(state, saved),
                _ => Turn.Stay(state),
            },
        };
    }

    private Frame<LogState> Logging(GridState grid)
    {
        LogDesk desk = new(room.Case, grid.Plan, store.Library, store.Today);
        LogState start = _session is null ? LogState.Open(desk) : _session with { Desk = desk };
        _session = null;
        return new Frame<LogState>(LogScreen.Definition, start)
        {
            Perform = (state, effect) => effect is not SessionReady ready ? Turn.Stay(state)
                : room.SaveCase(ready.Patient) is { } problem ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                : Turn.Leave(state, new CaseSaved(ready.Patient, null, $"The session of {ready.Session.Date:yyyy-MM-dd} is logged.")),
        };
    }

    private Frame<FlagListState> Flagging()
    {
        FlagDesk desk = FlagDesk.For(room.Case, store.Library, store.Today);
        FlagListState start = _flags?.On(desk) ?? FlagListState.Open(desk);
        _flags = null;
        return new Frame<FlagListState>(FlagScreen.Definition, start)
        {
            Perform = (state, effect) => effect switch
            {
                FlagsAnswered answered => room.SaveCase(answered.Patient) is { } problem
                    ? Turn.Stay(state with { Status = $"Not saved: {problem}" })
                    : Turn.Leave(state, new CaseSaved(answered.Patient, null, "The answers to the red flags are saved.")),
                FlagClosed closed => Turn.Stay(room.SaveCase(closed.Patient) is { } problem
                    ? state with { Status = $"Not saved: {problem}" }
                    : FlagListState.Open(desk with { Case = room.Case }) with { Index = state.Index, Status = "The note is saved." }),
                _ => Turn.Stay(state),
            },
        };
    }

    private Turn<GridState> Trying(GridState grid) => TryState.Open(grid) is not { } start
        ? Turn.Stay(grid with { Status = "There is no assessment yet whose readings could be tried: a enters one." })
        : Turn.Open(grid with { Status = "" }, new Frame<TryState>(TryScreen.Definition, start)
        {
            Perform = (state, effect) => effect switch
            {
                WalkScratch walk => Turn.Open(state, Scratch(walk.Grid)),
                ScratchLeft left => Turn.Stay(state.WithDoses(left.Plan)),
                _ => Turn.Stay(state),
            },
        });

    /// <summary>A grid of which nothing is kept: what it asks to save or keep is not done.</summary>
    private Frame<GridState> Scratch(GridState grid) => new(GridScreen.Definition, grid)
    {
        Perform = (state, effect) => effect switch
        {
            ShowCourse course => Turn.Open(state, Charting(state.Desk.Case, course.Measure)),
            LookUp look => Turn.Open(state, LibraryDoor.Open(store.Library, look.Entry)),
            _ => Turn.Stay(state),
        },
        Parting = state => new ScratchLeft(state.Plan),
    };

    private static GridState Waits(GridState grid, bool waits, string told) => grid with { Status = waits ? told : grid.Status };

    /// <summary>The grid on the case as it is now; a plan saved with it takes the place of the one before.</summary>
    private static GridState Taken(GridState grid, CaseSaved saved)
    {
        GridState on = grid with { Desk = PlanDesk.For(saved.Patient, grid.Desk.Library, grid.Desk.Today), Status = saved.Told };
        return saved.Plan is { } plan
            ? on.WithPlan(plan) with { Saved = plan, Done = [], Undone = [], Draft = null, DraftProblem = null }
            : on.WithPlan(on.Plan);
    }
}
