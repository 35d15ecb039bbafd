using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>The stim on the plan against the stim ladder.</summary>
internal static class LadderChecks
{
    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        if (facts.Course.Latest is { } verdict)
        {
            // A red flag is already told by the gate.
            if (verdict.Outcome != LadderOutcome.ReferAndLock)
            {
                yield return Verdict(facts, verdict);
            }

            foreach (Finding finding in PastStop(facts, verdict).Concat(NoStep(facts, verdict)))
            {
                yield return finding;
            }
        }

        foreach (Finding finding in HardReview(facts))
        {
            yield return finding;
        }
    }

    private static Finding Verdict(PlanFacts facts, LadderVerdict verdict) => new()
    {
        Rule = verdict.DecidedBy.Id,
        Severity = verdict.Outcome switch
        {
            LadderOutcome.StepBack => Severity.Warning,
            LadderOutcome.Hold when verdict.DecidedBy.Id == LadderRules.Irritation.Id => Severity.Warning,
            _ => Severity.Note,
        },
        Text = $"Ladder on {LadderFacts.Day(verdict.Date)}: {verdict.OutcomeWords}. "
            + (verdict.Outcome == LadderOutcome.NotEnoughInformation ? $"Needed: {string.Join("; ", verdict.ToMeasure)}."
                : verdict.Outcome == LadderOutcome.Hold && verdict.DecidedBy.Then == LadderOutcome.StepDown ? Holding(verdict)
                : verdict.Outcome != verdict.DecidedBy.Then ? "Stim has stopped, and nothing asks for it again."
                : verdict.DecidedBy.Advice),
        Inputs = [.. Deciding(verdict).SelectMany(condition => condition.Inputs).Distinct()],
        Limits = [.. Deciding(verdict).SelectMany(condition => condition.Limits).Distinct()],
        Source = verdict.DecidedBy.Source,
        Cells = facts.Plan.LaneOf(Lanes.Stim) is null ? [] : [PlanFacts.Stim(Math.Clamp(PostOpWeek.Of(facts.Plan.Operation, verdict.Date), Math.Max(1, facts.Plan.FirstOpenWeek), facts.Plan.Weeks))],
    };

    private static string Holding(LadderVerdict verdict) =>
        $"Not yet: {string.Join("; ", Deciding(verdict).Where(condition => condition.Truth == Truth.DoesNotHold).Select(condition => condition.Words))}.";

    private static ImmutableArray<Judged> Deciding(LadderVerdict verdict) =>
        verdict.Results.FirstOrDefault(result => result.Rule == verdict.DecidedBy)?.Conditions ?? [];

    private static IEnumerable<Finding> PastStop(PlanFacts facts, LadderVerdict verdict)
    {
        if (verdict.To != Rung.Stopped)
        {
            yield break;
        }

        ImmutableArray<CellAddress> cells = [.. StimAfter(facts, verdict.Date)];
        if (!cells.IsEmpty)
        {
            yield return new Finding
            {
                Rule = "PAIR-PAST-STOP",
                Severity = Severity.Warning,
                Text = $"Stim is planned past its stop criterion, met on {LadderFacts.Day(facts.Course.Since ?? verdict.Date)}: week{(cells.Length == 1 ? "" : "s")} {string.Join(", ", cells.Select(cell => cell.Week))}.",
                Inputs = [.. Deciding(verdict).SelectMany(condition => condition.Inputs).Distinct()],
                Limits = [.. Deciding(verdict).SelectMany(condition => condition.Limits).Distinct()],
                Source = verdict.DecidedBy.Source,
                Cells = cells,
                Cure = new Cure("Stop stim in these weeks; strengthening stays", [.. cells.Select(cell => new CellChange(cell, Stopped))]),
            };
        }
    }

    /// <summary>From the review week on, criteria that are met ask for a step.</summary>
    private static IEnumerable<Finding> NoStep(PlanFacts facts, LadderVerdict verdict)
    {
        Limit review = facts.Library.Limit(LimitIds.StimReviewWeek);
        int week = PostOpWeek.Of(facts.Plan.Operation, verdict.Date);
        if (verdict.Outcome != LadderOutcome.StepDown || week < review.Value)
        {
            yield break;
        }

        ImmutableArray<CellAddress> same = [.. StimAfter(facts, verdict.Date).Where(cell => facts.Plan.At(cell)?.Content is StimCell stim && stim.Rung <= verdict.From)];
        if (!same.IsEmpty)
        {
            yield return new Finding
            {
                Rule = "LADDER-WEEK-6",
                Severity = Severity.Warning,
                Text = $"Week {week}: the criteria for a step down are met, but the plan stays on the rung in week {same[0].Week}.",
                Inputs = [new Input("Rung", facts.Library.RungOf(verdict.From).Title)],
                Limits = [review],
                Source = review.Source,
                Cells = same,
            };
        }
    }

    private static IEnumerable<Finding> HardReview(PlanFacts facts)
    {
        Limit review = facts.Library.Limit(LimitIds.HardReviewWeek);
        foreach (int week in facts.OpenWeeks.Where(one => one.StimContractions > 0 && one.Week >= review.Value).Select(one => one.Week))
        {
            yield return new Finding
            {
                Rule = "LADDER-WEEK-8",
                Severity = week > review.Value ? Severity.Warning : Severity.Note,
                Text = $"Week {week}: stim is planned in or after week {Number.Text(review.Value)}: review whether it still earns its place.",
                Limits = [review],
                Source = review.Source,
                Cells = [PlanFacts.Stim(week)],
                Cure = new Cure($"Stop stim in week {week}; strengthening stays", [new CellChange(PlanFacts.Stim(week), Stopped)]),
            };
        }
    }

    private static StimCell Stopped { get; } = new(Rung.Stopped, 0, 0, DaysOfWeek.NoDay);

    /// <summary>Cells with stim in weeks that start after a day.</summary>
    private static IEnumerable<CellAddress> StimAfter(PlanFacts facts, DateOnly date) =>
        facts.OpenWeeks.Where(week => week.StimContractions > 0 && PostOpWeek.Start(facts.Plan.Operation, week.Week) > date).Select(week => PlanFacts.Stim(week.Week));
}
