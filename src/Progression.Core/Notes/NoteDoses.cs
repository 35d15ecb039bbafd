using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Notes;

/// <summary>
/// The plan of care: type, amount, frequency and duration of all that is planned. Amount is times a day, frequency times a week, duration weeks: 42 CFR 410.61
/// as a payer's text tells it.
/// </summary>
internal static class NoteDoses
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        PlanRevision plan = order.Plan;
        ImmutableArray<ImmutableArray<string>> rows =
        [
            .. plan.Lanes.Where(lane => lane.Band is Band.Stim or Band.Active).SelectMany(lane => Spans(plan, lane).Select(span => Row(order, span))),
        ];
        yield return new Block.Heading(2, "Plan of care");
        if (!plan.StimBarred.IsEmpty)
        {
            yield return new Block.Paragraph($"Stim is barred. {string.Join(" ", plan.StimBarred)}");
        }
        else if (order.Library.Regimens.GetValueOrDefault(plan.Regimen) is { } regimen)
        {
            yield return new Block.Paragraph($"Stim programme: {regimen.Title}; {regimen.Source}.");
        }

        yield return new Block.Paragraph("Amount is times a day, frequency days a week, duration post-op weeks. Only planned days of a week count.");
        yield return new Block.Table(["Treatment", "Amount", "Frequency", "Duration"], rows);
    }

    /// <summary>The stretches of weeks in a lane with the same treatment, as often a day and a week; its dose may grow meanwhile. Weeks without any are left out.</summary>
    private static IEnumerable<(CellContent First, CellContent Last, int From, int To)> Spans(PlanRevision plan, Lane lane)
    {
        (CellContent First, CellContent Last, int From, int To)? span = null;
        for (int week = plan.FirstWeek; week <= plan.Weeks; week++)
        {
            CellContent? content = plan.ContentAt(lane.Id, week) is StimCell { Contractions: 0 } ? null : plan.ContentAt(lane.Id, week);
            if (span is { } open && content is not null && GoesOn(open.Last, content))
            {
                span = open with { Last = content, To = week };
                continue;
            }

            if (span is { } ended)
            {
                yield return ended;
            }

            span = content is null ? null : (content, content, week, week);
        }

        if (span is { } last)
        {
            yield return last;
        }
    }

    private static bool GoesOn(CellContent before, CellContent now) => (before, now) switch
    {
        (ActiveCell one, ActiveCell two) => one.Exercise == two.Exercise && one.Dose.TimesPerDay == two.Dose.TimesPerDay && one.Dose.Days == two.Dose.Days,
        _ => Equals(before, now),
    };

    private static ImmutableArray<string> Row(NoteOrder order, (CellContent First, CellContent Last, int From, int To) span)
    {
        string weeks = span.From == span.To ? FormattableString.Invariant($"week {span.From}") : FormattableString.Invariant($"weeks {span.From} to {span.To} ({span.To - span.From + 1} weeks)");
        return span switch
        {
            { First: StimCell stim } => [FormattableString.Invariant($"Stim, {order.Library.RungOf(stim.Rung).Title.ToLowerInvariant()}: {stim.Contractions} contractions a session"), Times(stim.SessionsPerDay), Days(stim.Days), weeks],
            { First: ActiveCell first, Last: ActiveCell last } => [$"{order.Library.Exercises.GetValueOrDefault(first.Exercise)?.Title ?? first.Exercise}: {Sizes(first.Dose, last.Dose)}", Times(first.Dose.TimesPerDay), Days(first.Dose.Days), weeks],
            _ => throw new ArgumentOutOfRangeException(nameof(span), span, "No dose stands in such a cell."),
        };
    }

    private static string Sizes(ExerciseDose first, ExerciseDose last) => Size(first) == Size(last) ? Size(first) : $"{Size(first)}, growing to {Size(last)}";

    private static string Size(ExerciseDose dose) => string.Join(", ", new[]
    {
        dose.Bout is { } bout ? $"{Number.Text(bout.Seconds / 60, 1)} min" : FormattableString.Invariant($"{dose.Sets} x {dose.Repetitions}"),
        dose.Hold is { } hold ? $"hold {hold}" : null,
        dose.Load is { } load ? $"load {load}" : null,
    }.OfType<string>());

    private static string Times(int times) => times == 1 ? "once a day" : FormattableString.Invariant($"{times} times a day");

    private static string Days(DaysOfWeek days) => days.Count == 7 ? "7 days a week" : FormattableString.Invariant($"{days.Count} {(days.Count == 1 ? "day" : "days")} a week ({days})");
}
