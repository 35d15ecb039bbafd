using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Quantities;
using Progression.Records.Yaml;

namespace Progression.Records.Library;

/// <summary>Reads milestones.yaml. Milestones that drive the draft must form a course for their measure that never turns back.</summary>
internal static class MilestoneReader
{
    private static readonly NumberRange Weeks = new(0.5, 104, "wk");

    /// <summary>Reads the milestones.</summary>
    /// <param name="entries">The milestones.</param>
    /// <param name="known">The entries of the measures, of which a milestone may need one that a clinic took away.</param>
    /// <param name="measures">The measures that could be read.</param>
    public static ImmutableArray<Milestone> Read(LibraryEntries entries, LibraryEntries known, ImmutableSortedDictionary<string, Measure> measures)
    {
        entries.Require(MilestoneIds.All);
        ImmutableArray<Placed> read =
        [
            .. entries.All.Select(entry => One(entry, known.Known, measures) is Milestone milestone ? new Placed(milestone, entry) : null).OfType<Placed>()
                .OrderBy(each => each.Milestone.Week).ThenBy(each => each.Milestone.Id, StringComparer.Ordinal),
        ];
        known.Require(read.Select(each => each.Milestone.Measure).OfType<string>().Distinct());
        foreach (IGrouping<string, Placed> course in read.Where(each => each.Milestone is { Drives: true, Target: not null }).GroupBy(each => each.Milestone.Measure!))
        {
            foreach ((Placed before, Placed after) in course.Zip(course.Skip(1)))
            {
                CheckStep(before, after, measures[course.Key]);
            }
        }

        return [.. read.Select(each => each.Milestone)];
    }

    private static Milestone? One(LibraryEntry entry, IEnumerable<string> known, ImmutableSortedDictionary<string, Measure> measures)
    {
        Fields fields = entry.Fields;
        int before = fields.Problems.Count;
        string? title = fields.Text("title", Need.Required);
        string? measure = fields.OneOf("measure", Need.Optional, known);
        double? week = Week(fields);
        double? target = Target(fields, measure is null ? null : measures.GetValueOrDefault(measure));
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
            // A measure that is not known or could not be read has its own problem.
            if (fields.Scalar("target", Need.Optional) is { } target && !fields.Has("measure"))
            {
                fields.Refuse("target", "There is a target, but no measure.", "both or neither", target.Text);
            }

            return null;
        }

        NumberRange range = new(measure.Least, measure.Most, measure.Unit);
        return fields.As("target", Need.Required, Amount.Form("The target", measure.Unit, range).Read)?.Value;
    }

    private static void CheckStep(Placed before, Placed after, Measure measure)
    {
        bool higher = measure.Better == Direction.HigherIsBetter;
        bool turnsBack = higher ? after.Milestone.Target < before.Milestone.Target : after.Milestone.Target > before.Milestone.Target;
        bool blamesFirst = LibraryEntry.BlamesFirst(before.Entry, after.Entry);
        (Placed told, Placed other) = blamesFirst ? (before, after) : (after, before);
        if (turnsBack)
        {
            told.Entry.Fields.Refuse(
                "target",
                $"This is {(blamesFirst ? "better" : "worse")} than {other.Milestone.Id} in week {Number.Text(other.Milestone.Week)}.",
                $"{(higher == blamesFirst ? "at most" : "at least")} {Number.Text(other.Milestone.Target!.Value)} {measure.Unit}",
                Number.Text(told.Milestone.Target!.Value));
        }

        if (after.Milestone.Week == before.Milestone.Week)
        {
            told.Entry.Fields.Refuse(
                "week", $"{other.Milestone.Id} leads the draft in the same week.", "one leading milestone a week for each measure", Number.Text(told.Milestone.Week));
        }
    }

    private sealed record Placed(Milestone Milestone, LibraryEntry Entry);
}
