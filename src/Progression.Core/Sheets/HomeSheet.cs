using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Sheets;

/// <summary>One week of a plan in plain words for the patient: what to do on which day, how, when to stop and whom to call.</summary>
public static class HomeSheet
{
    private const int NoteLines = 4;

    /// <summary>The sheet of a week.</summary>
    /// <param name="order">What it is made from.</param>
    /// <param name="week">The post-op week, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The plan has no such week.</exception>
    public static Document Of(HomeSheetOrder order, int week)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentOutOfRangeException.ThrowIfLessThan(week, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(week, order.Plan.Weeks);
        return new Document(order.Words.Text("labels.title"), order.Mark, order.IsSigned,
            [.. Head(order, week), .. HomeStim.Of(order, week), .. Exercises(order, week), .. Warnings(order), .. Notes(order.Words)], order.Words.Language)
        {
            About = PlanFor(order),
        };
    }

    private static IEnumerable<Block> Head(HomeSheetOrder order, int week)
    {
        HomeWords words = order.Words;
        DateOnly operation = order.Plan.Operation;
        if (order.Clinic is { } clinic)
        {
            yield return new Block.Paragraph(clinic);
        }

        yield return new Block.Paragraph(PlanFor(order));
        yield return new Block.Paragraph(words.Text(
            "labels.week", ("week", Whole(week)), ("from", Day(PostOpWeek.Start(operation, week))), ("to", Day(PostOpWeek.End(operation, week)))));
        yield return new Block.Paragraph(words.Text("labels.surgeon"));
    }

    // The exercise along with stim belongs to the stimulator: it is done while the current comes.
    private static IEnumerable<Block> Exercises(HomeSheetOrder order, int week)
    {
        List<Block> blocks = [];
        foreach (Lane lane in order.Plan.Lanes.Where(lane => lane.Slot is not null and not ActiveSlot.QuadsWithStim))
        {
            if (order.Plan.ContentAt(lane.Id, week) is ActiveCell cell)
            {
                blocks.AddRange(HomeDose.Of(order, cell, week));
            }
        }

        HomeWords words = order.Words;
        Block first = new Block.Heading(2, words.Text("labels.exercises"));
        return blocks.Count == 0
            ? [first, new Block.Paragraph(words.Text("labels.no_exercises"))]
            : [first, new Block.Paragraph(words.Text("labels.done")), .. blocks];
    }

    private static IEnumerable<Block> Warnings(HomeSheetOrder order)
    {
        HomeWords words = order.Words;
        string call = order.Contact is { } contact ? words.Text("labels.call", ("contact", contact)) : words.Text("labels.call_open");
        yield return new Block.Notice(words.Text("labels.stop"), words.List("stop"));
        yield return new Block.Notice(words.Text("labels.today"), words.List("today").Add(call));
        yield return new Block.Notice(words.Text("labels.emergency"), words.List("emergency"));
    }

    private static IEnumerable<Block> Notes(HomeWords words) => [new Block.Heading(2, words.Text("labels.notes")), new Block.Lines(NoteLines)];

    /// <summary>The days of a week as the sheet shows them, and how often something is done on each.</summary>
    /// <param name="order">What the sheet is made from.</param>
    /// <param name="week">The week.</param>
    /// <param name="dose">On which days, and how often on each.</param>
    internal static Block.Ticks Ticks(HomeSheetOrder order, int week, (DaysOfWeek Days, int Times) dose)
    {
        string[] names = order.Words.Text("labels.day_names").Split(' ');
        DateOnly start = PostOpWeek.Start(order.Plan.Operation, week);
        ImmutableArray<DateOnly> days = [.. Enumerable.Range(0, 7).Select(start.AddDays)];
        HashSet<DateOnly> planned = [.. order.Plan.PlannedDays(week)];
        return new Block.Ticks(
            [.. days.Select(day => $"{names[((int)day.DayOfWeek + 6) % 7]} {Whole(day.Day)}")],
            [.. days.Select(day => planned.Contains(day) && dose.Days.Contains(day.DayOfWeek) ? dose.Times : 0)]);
    }

    private static string PlanFor(HomeSheetOrder order) => order.Words.Text("labels.plan_for", ("code", order.Plan.Code.Text), ("side", SideWord(order)));

    internal static string SideWord(HomeSheetOrder order) => order.Words.Text(order.Patient.Operation.Side == Side.Left ? "labels.side_left" : "labels.side_right");

    internal static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    // The one way to write a day that is read the same everywhere: ISO 8601.
    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
