using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;

namespace Progression.Core.Drafting;

/// <summary>The milestone lanes: what to reach by the end of each week.</summary>
internal static class TargetDraft
{
    internal static IEnumerable<KeyValuePair<CellAddress, PlanCell>> Cells(PlanRevision plan, DraftFacts facts) =>
        from lane in plan.Lanes
        where lane.Band == Band.Milestones
        from week in facts.PlannedWeeks
        let cell = lane.Measure is null ? Skills(lane, week, facts.Library) : Target(lane, week, facts)
        where cell is not null
        select cell.Value;

    private static KeyValuePair<CellAddress, PlanCell>? Target(Lane lane, int week, DraftFacts facts)
    {
        int behind = WeeksBehind(lane.Measure!, facts);
        if (facts.Expected.Target(lane.Measure!, week - behind) is not double target)
        {
            return null;
        }

        Measure measure = facts.Library.Measures[lane.Measure!];
        ImmutableArray<Milestone> around = facts.Expected.Around(lane.Measure!, week - behind);
        bool onOne = around.Length == 1;
        // Between milestones a goal in tenths would claim a precision that nobody can read off a knee.
        double value = onOne ? target : Math.Round(target, MidpointRounding.AwayFromZero);
        Basis basis = new(
            "TARGET-MILESTONE",
            onOne ? $"The milestone: {around[0].Title}." : $"Between two milestones, in a straight line, to whole {measure.Unit}: {string.Join(" and ", around.Select(one => one.Title))}."
                + (behind == 0 ? "" : $" The knee is clearly behind, so what was due in week {week - behind} is aimed at in week {week}."),
            [
                .. around.Select(one => new Input($"Milestone at week {Number.Text(one.Week)}", $"{Number.Text(one.Target ?? 0)} {measure.Unit}, {one.Source}")),
                new Input($"{measure.Title} in week {week}", facts.Expected.Words(lane.Measure!, week)),
            ],
            [],
            onOne ? around[0].Source : new Source(string.Join("; ", around.Select(one => one.Source.Text).Distinct()), Standing.Derived),
            "Another milestone in the clinic's library, or a target of your own.");
        return DraftFacts.Cell(lane.Id, week, new TargetCell(value), basis);
    }

    /// <summary>
    /// Whole weeks by which the dates of the milestones move when a plan is drafted again: 0 for a first plan, and for a knee that is behind by no more than
    /// the guard band of one reading or whose error is not known.
    /// </summary>
    private static int WeeksBehind(string measure, DraftFacts facts)
    {
        if (facts.Standing is null || facts.Expected.Latest is not { } latest || latest.Value(measure) is not double now)
        {
            return 0;
        }

        double? error = measure == MeasureIds.Lag ? MeasurementError.OfLag(facts.Library) : facts.Library.Measures[measure].StandardError;
        double? goal = facts.Expected.Target(measure, PostOpWeek.DayOf(facts.Case.Operation.Date, latest.Date) / 7.0);
        double shortfall = goal is double asked ? GuardBand.Shortfall(facts.Library.Measures[measure], now, asked) : 0;
        return shortfall > error * facts.Library.Limit(LimitIds.LagGuardSems).Value ? (int)facts.Expected.Delay(measure) : 0;
    }

    private static KeyValuePair<CellAddress, PlanCell>? Skills(Lane lane, int week, ClinicalLibrary library)
    {
        ImmutableArray<Milestone> due = [.. library.Milestones.Where(one => !one.Drives && one.Week > week - 1 && one.Week <= week)];
        if (due.IsEmpty)
        {
            return null;
        }

        string text = Joined([.. due.Select(one => one.Title)]);
        Basis basis = new(
            "SKILL-MILESTONE", $"Due by the end of week {week}: {string.Join("; ", due.Select(one => one.Title))}.",
            [.. due.Select(one => new Input(one.Title, $"week {Number.Text(one.Week)}, {one.Source}"))], [],
            due[0].Source, "Another milestone in the clinic's library, or words of your own.");
        return DraftFacts.Cell(lane.Id, week, new SkillCell(text), basis);
    }

    /// <summary>As many whole skills as a cell can hold, and how many more there are.</summary>
    private static string Joined(ImmutableArray<string> skills)
    {
        IEnumerable<string> wordings = Enumerable.Range(0, skills.Length)
            .Select(left => string.Join("; ", skills[..^left]) + (left == 0 ? "" : $"; and {left} more"));
        return wordings.FirstOrDefault(text => text.Length <= SkillCell.MostCharacters) ?? $"{skills.Length} skills";
    }
}
