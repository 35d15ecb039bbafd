using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads milestones.yaml. Milestones that drive the draft must form a course for their measure that never turns back.</summary>
internal static class MilestoneReader
{
    private static readonly NumberRange Weeks = new(0.5, 104, "wk");

    public static ImmutableArray<Milestone> Read(LibraryEntries entries, ImmutableSortedDictionary<string, Measure> measures)
    {
        entries.Require(MilestoneIds.All);
        ImmutableArray<(Milestone Milestone, Fields Fields)> read =
        [
            .. entries.All.Select(entry => (Milestone: One(entry, measures), entry.Fields)).Where(pair => pair.Milestone is not null)
                .Select(pair => (pair.Milestone!, pair.Fields))
                .OrderBy(pair => pair.Item1.Week).ThenBy(pair => pair.Item1.Id, StringComparer.Ordinal),
        ];
        foreach (IGrouping<string, (Milestone Milestone, Fields Fields)> course in read.Where(pair => pair.Milestone.Drives).GroupBy(pair => pair.Milestone.Measure!))
        {
            foreach (((Milestone before, _), (Milestone after, Fields fields)) in course.Zip(course.Skip(1)))
            {
                CheckStep(before, after, measures[course.Key], fields);
            }
        }

        return [.. read.Select(pair => pair.Milestone)];
    }

    private static Milestone? One(LibraryEntry entry, ImmutableSortedDictionary<string, Measure> measures)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required);
        string? measure = fields.OneOf("measure", Need.Optional, measures.Keys);
        double? week = Week(fields);
        double? target = Target(fields, measure is null ? null : measures[measure]);
        bool drives = fields.YesNo("drives", Need.Required) ?? false;
        if (drives && !(fields.Has("measure") && fields.Has("target")))
        {
            fields.Refuse("drives", "Only a measured target can lead the draft.", "no, or a measure and a target", "yes");
        }

        Source source = fields.Source();
        fields.Done();
        return fields.Problems.Count == before ? new Milestone(entry.Id, title!, measure, week!.Value, target, drives, source) : null;
    }

    private static double? Week(Fields fields)
    {
        double? week = fields.Decimal("week", Need.Required, Weeks);
        if (week is double given && given * 2 != Math.Floor(given * 2))
        {
            fields.Refuse("week", "The week is neither whole nor half.", "whole or half weeks, as in 1.5", Number.Text(given));
        }

        return week;
    }

    private static double? Target(Fields fields, Measure? measure)
    {
        if (measure is null)
        {
            // A measure that is not known has its own problem.
            if (fields.Scalar("target", Need.Optional) is { } target && !fields.Has("measure"))
            {
                fields.Refuse("target", "There is a target, but no measure.", "both or neither", target.Text);
            }

            return null;
        }

        NumberRange range = new(measure.Least, measure.Most, measure.Unit);
        return fields.As("target", Need.Required, Amount.Form("The target", measure.Unit, range).Read)?.Value;
    }

    private static void CheckStep(Milestone before, Milestone after, Measure measure, Fields fields)
    {
        bool turnsBack = measure.Better == Direction.HigherIsBetter ? after.Target < before.Target : after.Target > before.Target;
        if (turnsBack)
        {
            string bound = measure.Better == Direction.HigherIsBetter ? "at least" : "at most";
            fields.Refuse("target", $"This is worse than {before.Id} in week {Number.Text(before.Week)}.", $"{bound} {Number.Text(before.Target!.Value)} {measure.Unit}", Number.Text(after.Target!.Value));
        }

        if (after.Week == before.Week)
        {
            fields.Refuse("week", $"{before.Id} leads the draft in the same week.", "one leading milestone a week for each measure", Number.Text(after.Week));
        }
    }
}
