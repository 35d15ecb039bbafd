using Progression.App.Actions;
using Progression.App.Assess;
using Progression.App.Caseload;
using Progression.App.Grid;
using Progression.App.Intake;
using Progression.App.Start;
using Progression.App.Stores;
using Progression.Core.People;
using Progression.Records.Caseload;
using Progression.Records.Storage;

namespace Progression.App.Screens;

/// <summary>The list of cases in the stack of screens. What the store cannot do now is told on the list, and nothing is lost.</summary>
/// <param name="order">What the workbook was asked to open.</param>
/// <param name="farewells">Takes what each plan says on leaving.</param>
public sealed class ListFrame(WorkbookOrder order, Farewells farewells)
{
    private readonly Dictionary<CaseCode, CaseRoom> _rooms = [];
    private FirstPlan? _steps;
    private CaseRoom? _room;
    private CaseListing? _listing;

    /// <summary>The list of the store as it is now.</summary>
    /// <param name="status">What the list tells at first.</param>
    /// <param name="at">The case under the cursor, where it is in the list.</param>
    public Frame Open(string status = "", CaseCode? at = null) => new Frame<StartState>(StartScreen.Definition, List(status.Length > 0 ? status : Steps.Found ?? "", at))
    {
        Perform = Perform,
        Others = _ => Look(),
        Parting = state => new ListLeft(state.Status),
    };

    /// <summary>The plan of a case.</summary>
    /// <param name="code">Which case.</param>
    /// <param name="first">What the grid tells at first, and an assessment that waits.</param>
    /// <returns>The screen; null with a sentence that says why there is none.</returns>
    public (Frame? Frame, string? Why) Plan(CaseCode code, (string Told, AssessState? Unfinished) first = default)
    {
        (OpenedPlan? plan, string? why) = OpenedPlan.Of(order.Store, code);
        if (plan is null)
        {
            return (null, why);
        }

        return (Grid(plan, first.Told is null ? plan.Start : plan.Start with { Status = first.Told, Waiting = first.Unfinished is null ? plan.Start.Waiting : plan.Start.Waiting.Add(CaseDoors.TheAssessment) }, first.Unfinished), null);
    }

    /// <summary>The plan of a case to be reviewed: what a reviewer reads first, and the changes marked.</summary>
    /// <param name="code">Which case.</param>
    public (Frame? Frame, string? Why) Review(CaseCode code)
    {
        (OpenedPlan? plan, string? why) = OpenedPlan.Of(order.Store, code);
        return plan?.Start is not { Review: { } review } start ? (null, why)
            : (Grid(plan, GridReviewing.Open(start with { Review = review with { MarksChanges = review.Signed is not null } }) with { Status = start.Status }), null);
    }

    /// <summary>The reviews that wait.</summary>
    public Frame Queue() => new QueueDoor(order.Store, Review).Open();

    private Frame<GridState> Grid(OpenedPlan plan, GridState start, AssessState? unfinished = null) =>
        PlanFrame.Of(start, plan.Room.Keeper, farewells.Tell, new CaseDoors(plan.Room, order.Store, unfinished).Open, plan.Room.LookAtOthers);

    private FirstPlan Steps => _steps ??= new FirstPlan(order.Store, Plan);

    private Turn<StartState> Perform(StartState state, ScreenEffect effect)
    {
        try
        {
            return effect switch
            {
                OpenPlan open => Opened(state, open.Code),
                NewCase => Begin(state),
                ChangeCase change => InRoom(state, change.Code, room => room.AsLeft(IntakeDraft.OfCase)),
                ScreenCase screen => InRoom(state, screen.Code, room => room.AsLeft(ScreeningDraft.FormName)),
                CaseSaved saved => Turn.Stay(Back(state, saved.Told, saved.Patient.Code)),
                IntakeLeft or ScreeningLeft or AssessmentLeft => Left(state, effect),
                ShowDemo => Demo(state),
                ShowSettings => order.Settings is { } settings ? Turn.Open(state with { Status = "" }, SettingsDoor.Open(settings)) : Turn.Stay(state with { Status = "No settings are kept here." }),
                ShowReviews => Turn.Open(state with { Status = "" }, Queue()),
                ShowFigures => Turn.Open(state with { Status = "" }, new FiguresDoor(order.Store).Open()),
                BrowseLibrary => Turn.Open(state, LibraryDoor.Open(order.Store.Library)),
                PlanLeft left => Turn.Stay(Back(state, left.Told ?? "", left.Code)),
                ListRead read => Turn.Stay(Refreshed(state, read.Listing)),
                ListLeft left => Turn.Stay(Back(state, left.Told, null)),
                ReadAgain => ReadAnew(state),
                _ => Turn.Stay(state),
            };
        }
        catch (Exception fault) when (fault is StoreException or FormatException or IOException or UnauthorizedAccessException)
        {
            return Turn.Stay(state with { Status = fault.Message });
        }
    }

    // Asked for by hand, so it is read although nobody seems to have saved.
    private Turn<StartState> ReadAnew(StartState state)
    {
        _listing = null;
        return Turn.Stay(Back(state, "The list is as it is now.", null));
    }

    private Turn<StartState> Opened(StartState state, CaseCode code)
    {
        (Frame? plan, string? why) = Plan(code);
        if (plan is null && Steps.Resume(code) is { } step)
        {
            _room = null;
            return Stepped(state, step);
        }

        return plan is null ? Turn.Stay(state with { Status = why ?? "" }) : Turn.Open(state, plan);
    }

    private Turn<StartState> Begin(StartState state)
    {
        _room = null;
        return Turn.Open(state with { Status = "" }, Steps.Begin([.. state.Cases.Select(line => line.Code.Text)]));
    }

    private Turn<StartState> InRoom(StartState state, CaseCode code, Func<CaseRoom, Frame> open)
    {
        OpenedCase opened = order.Store.Book.Open(code) ?? throw new FormatException($"There is no case {code} any more.");
        StoredPlan kept = new(order.Store, opened);
        _rooms[code] = _room = _rooms.TryGetValue(code, out CaseRoom? room) ? room.On(kept) : new CaseRoom(kept, order.Store);
        Frame frame = open(_room);
        return Turn.Open(state with { Status = "" }, opened.Unnoted is { } unnoted ? frame.Tell(unnoted) : frame);
    }

    private Turn<StartState> Left(StartState state, ScreenEffect left) =>
        _room is { } room ? Turn.Stay(state with { Status = Waits(room.Left(left)) })
        : Steps.Hear(left) is { } step ? Stepped(state, step)
        : Turn.Stay(state);

    private static string Waits(((string Form, string Key) What, bool Waits, string? Problem) left) => left.Problem is { } problem ? $"The draft could not be kept: {problem}"
        : left.Waits ? $"Not finished, and kept: {left.What.Form}; {left.What.Key} goes on with it." : "";

    private Turn<StartState> Stepped(StartState state, (Move.Open? Open, string? Told) step) =>
        step.Open is { } open ? new Turn<StartState>(state, [open]) : Turn.Stay(Back(state, step.Told ?? "", null));

    private Turn<StartState> Demo(StartState state)
    {
        OpenStore demo = order.Demo();
        DemoAnswer answer = DemoStore.Prepare(demo, fresh: false);
        if (!answer.Ready)
        {
            return Turn.Stay(Back(state, answer.Told, null));
        }

        ListFrame inside = new(order with { Store = demo }, farewells);
        (Frame? plan, string? why) = inside.Plan(DemoStore.Showcase);
        Frame list = inside.Open(why ?? answer.Told, DemoStore.Showcase);
        return plan is null ? Turn.Open(state, list) : Turn.Open(state, list, plan);
    }

    /// <summary>The list as it is now, the cursor on a case where it is still there.</summary>
    private StartState List(string status, CaseCode? at = null)
    {
        CaseListing now = _listing = _listing?.Now(order.Store) ?? CaseListing.Read(order.Store);
        return Of(now).On(at) with { Status = status };
    }

    /// <summary>A list that was left for a while: as it is now, with the choice and the cursor it had.</summary>
    private StartState Back(StartState before, string status, CaseCode? at)
    {
        CaseListing now = _listing = _listing?.Now(order.Store) ?? CaseListing.Read(order.Store);
        StartState list = Of(now) with { Choice = before.Choice, Finding = before.Finding, Index = before.Index };
        return list.On(at ?? before.Chosen?.Code) with { Status = status };
    }

    /// <summary>What others have saved, while the list is on the screen: everything but its lines stays as it is.</summary>
    private StartState Refreshed(StartState state, CaseListing now)
    {
        StartState read = Of(_listing = now);
        return (state with { Now = read.Now, Today = read.Today, Cases = read.Cases, HitRate = read.HitRate }).On(state.Chosen?.Code);
    }

    private ListRead? Look()
    {
        try
        {
            return _listing is { } known && known.Now(order.Store) is { } now && !ReferenceEquals(now, known) ? new ListRead(now) : null;
        }
        catch (Exception fault) when (fault is StoreException or IOException or UnauthorizedAccessException)
        {
            return null; // Looked again in a second; Ctrl+R says what is wrong.
        }
    }

    private StartState Of(CaseListing listing) => new()
    {
        Folder = order.Store.Folder,
        IsDemo = order.Store.IsDemo,
        Now = order.Store.Clock.GetUtcNow(),
        Today = listing.Today,
        Cases = listing.Cases,
        HitRate = listing.HitRate,
    };
}

/// <summary>The list was read again because somebody had saved.</summary>
/// <param name="Listing">The list as it is now.</param>
public sealed record ListRead(CaseListing Listing) : ScreenEffect;

/// <summary>A list of cases was left for the one below.</summary>
/// <param name="Told">What it told last.</param>
public sealed record ListLeft(string Told) : ScreenEffect;
