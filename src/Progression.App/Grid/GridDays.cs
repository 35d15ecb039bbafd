using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Pictures;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>A week of the plan by its seven days: what falls on which day, and what of it is logged.</summary>
internal static class GridDays
{
    private const int Days = 7;
    private const int NarrowDay = 6;
    private const int WideDay = 10;
    private const int WideFrom = 120;
    private const int MostName = 60;

    private static readonly string[] Legend =
    [
        "2x: due twice that day.  1/2: once of twice logged.  -/2: not known, nothing of it is logged.  +1: logged, not planned.",
        "· before the plan's first day.  Goals hold for the end of the week.",
    ];

    public static Picture Draw(GridState state, PictureSize room)
    {
        (int name, int day) = Widths(room.Width);
        return new([.. Header(state, name, day), .. ScrolledText.Of(Lines(state, room.Width), state.Scroll, new(room.Width, room.Height - GridSheet.HeaderLines)).Rows]);
    }

    /// <summary>Everything under the header.</summary>
    public static IReadOnlyList<PictureRow> Lines(GridState state, int width)
    {
        (int name, int day) = Widths(width);
        return
        [
            .. Told(state).SelectMany(row => Shown(row, (name, day))),
            PictureRow.Empty,
            .. Goals(state).SelectMany(goal => TextLines.Labelled("Goal", goal, width)),
            .. Legend.SelectMany(line => TextLines.Wrapped(line, width, Ink.Quiet)),
        ];
    }

    private static (int Name, int Day) Widths(int width)
    {
        int day = width >= WideFrom ? WideDay : NarrowDay;
        return (Math.Clamp(width - (Days * (day + 1)), 10, MostName), day);
    }

    public static ImmutableArray<DateOnly> DaysOf(GridState state)
    {
        DateOnly start = PostOpWeek.Start(state.Plan.Operation, state.Week);
        return [.. Enumerable.Range(0, Days).Select(start.AddDays)];
    }

    private static IEnumerable<PictureRow> Header(GridState state, int name, int day)
    {
        List<TextSpan> dates = [new(TextFit.Exactly($"week {state.Week} of {state.Plan.Weeks}", name), Ink.Strong)];
        List<TextSpan> numbers = [new(TextFit.Exactly("", name))];
        foreach (DateOnly date in DaysOf(state))
        {
            bool today = date == state.Desk.Today;
            Ink ink = today ? Ink.Today : Ink.Strong;
            dates.AddRange([new("│", Ink.Quiet), new(TextFit.Exactly(date.ToString("ddd d", CultureInfo.InvariantCulture), day), ink)]);
            numbers.AddRange([new("│", Ink.Quiet), new(TextFit.Exactly(today ? "▼ now" : $"d {PostOpWeek.DayOf(state.Plan.Operation, date)}", day), today ? ink : Ink.Quiet)]);
        }

        return [new([.. dates]), new([.. numbers])];
    }

    /// <summary>Each work with what is due and done of it on each day; then which days were logged and assessed.</summary>
    public static IEnumerable<(Band? Opens, string Title, ImmutableArray<string> Cells, Ink Ink)> Told(GridState state)
    {
        ImmutableArray<DateOnly> days = DaysOf(state);
        ILookup<DateOnly, SessionLog> logs = state.Desk.Case.Sessions.ToLookup(log => log.Date);
        return
        [
            .. Works(state).Select(work => (work.Opens ? work.Lane.Band : (Band?)null, work.Title,
                days.Select(date => Cell(state, work, date, [.. logs[date]])).ToImmutableArray(), BandWords.InkOf(work.Lane.Band))),
            (null, "Sessions logged", [.. days.Select(date => logs[date].Any() ? $"{logs[date].Count()}" : "")], Ink.Check),
            (null, "Assessed", [.. days.Select(date => state.Desk.Case.Assessments.Any(visit => visit.Date == date) ? "yes" : "")], Ink.Check),
        ];
    }

    private static IEnumerable<PictureRow> Shown((Band? Opens, string Title, ImmutableArray<string> Cells, Ink Ink) row, (int Name, int Day) widths) =>
    [
        .. row.Opens is { } band ? [PictureRow.Of(BandWords.Title(band).ToUpperInvariant(), BandWords.InkOf(band))] : Array.Empty<PictureRow>(),
        Row(row.Title, row.Cells, widths, row.Ink),
    ];

    // Done of due, as in the lane of the checks; of a day of which nothing is logged nothing is known.
    private static string Cell(GridState state, DayWork work, DateOnly date, ImmutableArray<SessionLog> logs)
    {
        int due = date >= state.Plan.From && work.Days.Contains(date.DayOfWeek) ? work.TimesPerDay : 0;
        int done = logs.Sum(work.Done);
        return due == 0 ? done > 0 ? $"+{done}" : date < state.Plan.From ? "·" : ""
            : logs.Any(work.IsTold) ? $"{done}/{due}"
            : date < state.Desk.Today ? $"-/{due}"
            : $"{due}x";
    }

    private static PictureRow Row(string title, ImmutableArray<string> cells, (int Name, int Day) widths, Ink ink) => new(
    [
        new(TextFit.Exactly(title, widths.Name)),
        .. cells.SelectMany(cell => new TextSpan[] { new("│", Ink.Quiet), new(TextFit.Exactly(cell, widths.Day), ink) }),
    ]);

    private static IEnumerable<DayWork> Works(GridState state)
    {
        Band? before = null;
        foreach (Lane lane in state.Plan.Lanes)
        {
            if (DayWork.Of(lane, state.Plan.ContentAt(lane.Id, state.Week), state.Desk.Library) is { } work)
            {
                yield return work with { Opens = lane.Band != before };
                before = lane.Band;
            }
        }
    }

    public static IEnumerable<string> Goals(GridState state) => state.Plan.Lanes.Where(lane => lane.Band == Band.Milestones && state.Plan.ContentAt(lane.Id, state.Week) is not null)
        .Select(lane => $"{lane.Title}: {CellWords.Of(state, lane, state.Week).Whole[0]}");
}

/// <summary>What is to be done on some days of a week.</summary>
/// <param name="Lane">Its lane.</param>
/// <param name="Title">What and how much.</param>
/// <param name="Days">On which days.</param>
/// <param name="TimesPerDay">How often on each.</param>
/// <param name="Done">How often a session has it.</param>
internal sealed record DayWork(Lane Lane, string Title, DaysOfWeek Days, int TimesPerDay, Func<SessionLog, int> Done)
{
    /// <summary>Whether a session tells of it: one of which no exercise was recorded says nothing of exercises.</summary>
    public Func<SessionLog, bool> IsTold { get; init; } = _ => true;

    /// <summary>Whether its band begins with it.</summary>
    public bool Opens { get; init; }

    /// <summary>The work of a cell; null where it holds none.</summary>
    public static DayWork? Of(Lane lane, CellContent? content, ClinicalLibrary library) => content switch
    {
        StimCell { Rung: not Rung.Stopped } stim =>
            new(lane, $"{library.RungOf(stim.Rung).Title}, {stim.Contractions} contractions", stim.Days, stim.SessionsPerDay, log => log.Contractions > 0 ? 1 : 0),
        ActiveCell active => new(lane, Name(active, library), active.Dose.Days, active.Dose.TimesPerDay, log => Times(log, active.Exercise))
        {
            // The contraction along with stim is seldom logged by itself.
            IsTold = log => lane.Id == Lanes.WithStim ? Times(log, active.Exercise) > 0 : !log.Exercises.IsEmpty,
        },
        _ => null,
    };

    private static int Times(SessionLog log, string exercise) => log.Exercises.Count(done => done.Exercise == exercise);

    private static string Name(ActiveCell active, ClinicalLibrary library)
    {
        string size = active.Dose.Bout is { } bout ? $"{Core.Quantities.Number.Text(bout.Seconds / 60, 1)} min" : $"{active.Dose.Sets}x{active.Dose.Repetitions}";
        string hold = active.Dose.Hold is { } held ? $" {held}" : "", load = active.Dose.Load is { } added ? $" {added}" : "";
        return $"{library.Exercises.GetValueOrDefault(active.Exercise)?.Short ?? active.Exercise} {size}{hold}{load}";
    }
}
