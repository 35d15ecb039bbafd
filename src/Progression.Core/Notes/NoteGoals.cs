using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Notes;

/// <summary>What the plan aims at, what was measured last, and what is expected: a range and a chance, never one figure.</summary>
internal static class NoteGoals
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        ImmutableArray<(Lane Lane, Measure Measure)> lanes =
            [.. order.Plan.Lanes.Where(lane => lane.Measure is not null).Select(lane => (lane, order.Library.Measures[lane.Measure!]))];
        ImmutableArray<(Measure Measure, ForecastAnswer Answer)> answers = [.. lanes.Select(one => (one.Measure, Answer(order, one.Measure)))];
        yield return new Block.Heading(2, "Goals");
        yield return new Block.Table(["Goal", "Aim", "Measured last", "Expected, 8 in 10", "Chance"],
            [.. lanes.Zip(answers).SelectMany(pair => Aims(order.Plan, pair.First.Lane, order.Today).Select(aim => Row(order, pair.Second, aim)))]);
        yield return new Block.Points([.. answers.SelectMany(one => Told(order, one)), .. Skills(order)], InOrder: false);
        yield return new Block.Paragraph(
            "Expected is what usually follows under usual care, given the readings: not the effect of a stim dose, and no promise. Chances are of the true value on its aim in that week; no phase rests on them.");
    }

    private static ForecastAnswer Answer(NoteOrder order, Measure measure) => order.Patient.Assessments.IsEmpty
        ? new ForecastAnswer(null, "Nothing was measured since the operation.")
        : Forecasting.Of(order.Patient, order.Library, measure.Id, order.Patient.Assessments[^1].Date);

    /// <summary>The aim of the present week, and the last one of the plan; once where they are the same.</summary>
    private static IEnumerable<(double Value, int Week)> Aims(PlanRevision plan, Lane lane, DateOnly today)
    {
        ImmutableArray<(double Value, int Week)> aims =
        [
            .. Enumerable.Range(1, plan.Weeks).Select(week => (Cell: plan.ContentAt(lane.Id, week) as TargetCell, Week: week))
                .Where(one => one.Cell is not null).Select(one => (one.Cell!.Value, one.Week)),
        ];
        int now = PostOpWeek.Of(plan.Operation, today);
        return aims.Where(aim => aim.Week >= now).Take(1).Concat(aims.TakeLast(1)).Distinct();
    }

    private static ImmutableArray<string> Row(NoteOrder order, (Measure Measure, ForecastAnswer Answer) of, (double Value, int Week) aim)
    {
        Measure measure = of.Measure;
        string than = measure.Better == Direction.HigherIsBetter ? "at least" : "at most";
        string expected = of.Answer.Forecast?.At(aim.Week) is { } point ? $"{ForecastWords.Range(point, measure, (point.Low80, point.High80), " to ")} {Unit(measure)}".TrimEnd() : "no forecast";
        string chance = of.Answer.Forecast is not null
            && Forecasting.ChanceAtLeast(order.Patient, order.Library, measure.Id, aim.Value, aim.Week, order.Patient.Assessments[^1].Date) is double known ? ForecastWords.InTen(known) : "not known";
        return [measure.Title, FormattableString.Invariant($"{than} {MeasureText.Shown(measure, aim.Value)} by the end of week {aim.Week}"), Measured(order, measure), expected, chance];
    }

    private static string Measured(NoteOrder order, Measure measure)
    {
        KneeState? last = order.Patient.Assessments.Select(one => KneeState.At(one, order.Patient)).LastOrDefault(state => state.OwnValue(measure.Id) is not null);
        return last is null ? "not measured" : $"{MeasureText.Shown(measure, last.OwnValue(measure.Id)!.Value)} on {NoteOrder.Day(last.Date)}";
    }

    /// <summary>Milestones within the plan that are not met yet; why there is no forecast.</summary>
    private static IEnumerable<string> Told(NoteOrder order, (Measure Measure, ForecastAnswer Answer) one) => one.Answer.Forecast is not { } forecast
        ? [$"{one.Measure.Title}: no forecast. {one.Answer.WhyNot}"]
        :
        [
            .. forecast.Milestones.Where(outlook => outlook.Milestone.Week <= order.Plan.Weeks).Select(outlook => $"{outlook.Milestone.Title}: {outlook.Words}."),
            $"{one.Measure.Title} rests on: {forecast.BasisWords}.",
        ];

    private static IEnumerable<string> Skills(NoteOrder order)
    {
        int now = Math.Max(order.Plan.FirstWeek, PostOpWeek.Of(order.Plan.Operation, order.Today));
        return from week in Enumerable.Range(now, Math.Max(0, order.Plan.Weeks - now + 1))
               let skills = order.Plan.ContentAt(Lanes.Seen, week) as SkillCell
               where skills is not null
               select FormattableString.Invariant($"To be seen by the end of week {week}: {skills.Text}");
    }

    private static string Unit(Measure measure) => measure.Unit == "1" ? "" : measure.Unit;
}
