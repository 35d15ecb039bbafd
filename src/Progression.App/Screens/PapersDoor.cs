using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Exchange.Calendar;
using Progression.Records.Audit;
using Progression.Records.Storage;
using Progression.Records.Words;

namespace Progression.App.Screens;

/// <summary>Opens the papers of a case; makes them, writes their files and writes down that it did.</summary>
/// <param name="room">Keeps the case.</param>
/// <param name="store">The store.</param>
internal sealed class PapersDoor(StoredPlan room, OpenStore store)
{
    private readonly PaperPlace _place = PaperPlace.Of(store.Folder, store.Clinic);

    /// <summary>The papers of the plan as it was saved.</summary>
    /// <param name="week">The week to begin with.</param>
    public Frame Open(int week) => new Frame<PapersState>(PapersScreen.Definition, Start(week))
    {
        Perform = (state, effect) => effect switch
        {
            WritePaper write => Turn.Stay(Written(state, write.Name)),
            ReadPaper => Turn.Stay(Read(state)),
            _ => Turn.Stay(state),
        },
    };

    private PapersState Start(int week)
    {
        ImmutableArray<(string Id, string Title)> measures = [.. Comparison.Of(room.Case, store.Library).Rows.Select(row => (row.Measure.Id, row.Measure.Title))];
        string? first = measures.Any(measure => measure.Id == MeasureIds.Lag) ? MeasureIds.Lag : measures.Select(measure => measure.Id).FirstOrDefault();
        return new PapersState { Order = Order(room.Plan!, week) with { Measure = first }, Measures = measures, Folder = _place.Folder };
    }

    private PaperOrder Order(PlanRevision plan, int week)
    {
        GridReview? review = room.Review(null);
        return new PaperOrder
        {
            Patient = room.Case,
            Plan = plan,
            Library = store.Library,
            Standing = review?.Standing ?? ReviewStanding.NotSaved,
            ChainHead = store.Book.ChainHead(),
            Today = store.Today,
            Week = Math.Clamp(week, plan.FirstWeek, plan.Weeks),
            Words = HomeWordsReader.English(),
            Clinic = store.Clinic?.PrintHeader,
            Contact = store.Clinic?.PrintContact,
            Calendar = new CalendarWishes(store.Clock.GetUtcNow(), CalendarZone.OfSystem(store.Clock.LocalTimeZone).Id)
            {
                Former = () => room.Review(null)?.Standing is { Plan.Revision: var revision } ? store.Book.Former(room.Case.Code, revision) : [],
            },
            Bundle = new BundleWishes(store.Clock.GetUtcNow()) { Saved = review?.Plan.Newest },
        };
    }

    private PapersState Written(PapersState state, string name)
    {
        Paper paper = state.Chosen;
        if (store.Book.Trail.Refusal(paper.Act, state.Order.Patient.Code.Text) is { } refused)
        {
            return state with { Status = refused };
        }

        // Written down is what was made, before anybody has it.
        PaperMade made = paper.Make(state.Order, state.Format);
        if ((made.WhyNot ?? Noted(paper, state.Order)) is { } told)
        {
            return state with { Mode = PapersMode.List, Status = told };
        }

        (string? path, string? problem) = _place.Put(name, made, state.Format);
        return problem is null
            ? state with { Mode = PapersMode.List, Status = $"Written: {SafeText.OneLine(path!)}" }
            : state with { Status = $"Not written: {SafeText.OneLine(problem)}" };
    }

    private string? Noted(Paper paper, PaperOrder order) => store.Book.Trail.Note(new AuditNote(
        paper.Noted,
        order.Patient.Code.Text,
        RecordKind.Plan,
        new RevisionRef(order.Standing.Plan.Revision, order.Standing.Plan.Hash),
        $"{paper.Name} {paper.Beside(order)}".TrimEnd()));

    private PapersState Read(PapersState state)
    {
        PaperFormat? readable = state.Chosen.Formats.Where(format => format is PaperFormat.Text or PaperFormat.Markdown or PaperFormat.Csv or PaperFormat.Calendar).Select(format => (PaperFormat?)format).FirstOrDefault();
        if (store.Book.Trail.Refusal(state.Chosen.Act, state.Order.Patient.Code.Text) is { } refused)
        {
            return state with { Status = refused };
        }

        if (readable is not { } format)
        {
            return state with { Status = "There is nothing of it to read here: Enter writes it as a file." };
        }

        PaperMade made = state.Chosen.Make(state.Order, format);
        return made.Text is not { } text
            ? state with { Status = made.WhyNot ?? "" }
            : state with { Mode = PapersMode.Reading, Scroll = 0, Status = "", Text = [.. text.TrimEnd().ReplaceLineEndings("\n").Split('\n')] };
    }
}
