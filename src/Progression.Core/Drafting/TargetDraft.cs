using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
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
        if (facts.Expected.Target(lane.Measure!, week) is not double target)
        {
            return null;
        }

        Measure measure = facts.Library.Measures[lane.Measure!];
        ImmutableArray<Milestone> around = facts.Expected.Around(lane.Measure!, week);
        bool onOne = around.Length == 1;
        // Between milestones a goal in tenths would claim a precision that nobody can read off a knee.
        double value = onOne ? target : Math.Round(target, MidpointRounding.AwayFromZero);
        Basis basis = new(
            "TARGET-MILESTONE",
            onOne ? $"The milestone: {around[0].Title}." : $"Between two milestones, in a straight line, to whole {measure.Unit}: {string.Join(" and ", around.Select(one => one.Title))}.",
            [
                .. around.Select(one => new Input($"Milestone at week {Number.Text(one.Week)}", $"{Number.Text(one.Target ?? 0)} {measure.Unit}, {one.Source}")),
                new Input($"{measure.Title} in week {week}", facts.Expected.Words(lane.Measure!, week)),
            ],
            [],
            onOne ? around[0].Source : new Source(string.Join("; ", around.Select(one => one.Source.Text).Distinct()), Standing.Derived),
            "Another milestone in the clinic's library, or a target of your own.");
        return DraftFacts.Cell(lane.Id, week, new TargetCell(value), basis);
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
