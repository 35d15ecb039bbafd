using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Rules;

/// <summary>Whether an exercise may be given in a week: its needs against what the knee does or is expected to do by then.</summary>
public sealed class Admission(Case patient, ExpectedCourse course)
{
    private readonly Dictionary<(string, int), ImmutableArray<Judged>> _judged = [];

    /// <summary>Each need as it came out; empty when the exercise needs nothing.</summary>
    public ImmutableArray<Judged> Judge(Exercise exercise, int week) =>
        _judged.TryGetValue((exercise.Id, week), out ImmutableArray<Judged> known) ? known : _judged[(exercise.Id, week)] = [.. OfKnee(exercise.Needs, week), .. OfSurgeon(exercise, week)];

    /// <summary>Whether all needs hold.</summary>
    public Truth Truth(Exercise exercise, int week) => Truths.All(Judge(exercise, week).Select(one => one.Truth));

    private IEnumerable<Judged> OfKnee(ExerciseNeeds needs, int week)
    {
        if (needs.WeekAtLeast is int first)
        {
            yield return new Judged($"post-op week {first} or later", Truths.From(week >= first), [new Input("Post-op week", $"{week}")]);
        }

        if (needs.ContractionVisible)
        {
            yield return Sign(Signs.ContractionVisible, MilestoneIds.Contraction, "a voluntary contraction can be seen", week);
        }

        if (needs.StraightLegRaise)
        {
            yield return Sign(Signs.StraightLegRaise, MilestoneIds.StraightLegRaise, "the straight leg can be raised", week);
        }

        if (needs.LagAtMost is { } lag)
        {
            yield return Value(MeasureIds.Lag, $"extension lag at most {lag}", value => value <= lag.Degrees, week);
        }

        if (needs.FlexionAtLeast is { } flexion)
        {
            yield return Value(MeasureIds.FlexionActive, $"flexion at least {flexion}", value => value >= flexion.Degrees, week);
        }

        if (needs.IndexAtLeast is { } index)
        {
            yield return Value(MeasureIds.Index, $"quadriceps index at least {index}", value => value >= index.Percent, week);
        }
    }

    private IEnumerable<Judged> OfSurgeon(Exercise exercise, int week)
    {
        if (exercise.Needs.WeightBearingAtLeast is { } load)
        {
            bool? allowed = patient.WeightBearing is { } now ? now >= load : null;
            yield return new Judged($"weight-bearing at least {Words(load)}", Truths.From(allowed), [new Input("Weight-bearing allowed", patient.WeightBearing is { } given ? Words(given) : "not stated")])
            {
                Missing = allowed is null ? "ask the surgeon what load is allowed" : null,
            };
        }

        if (patient.Surgeon.FlexionAtMost is { } most && exercise.Needs.FlexionAtLeast is { } needed)
        {
            yield return new Judged($"within the surgeon's flexion limit of {most}", Truths.From(needed <= most), [new Input("The exercise bends to", needed.ToString())]);
        }

        if (patient.Surgeon.NoResistanceBefore is { } from && exercise.Resisted)
        {
            DateOnly start = PostOpWeek.Start(patient.Operation.Date, week);
            yield return new Judged($"resistance allowed by the surgeon from {LadderFacts.Day(from)}", Truths.From(start >= from), [new Input("The week starts", LadderFacts.Day(start))]);
        }
    }

    private Judged Sign(string sign, string milestone, string words, int week)
    {
        bool? expected = course.ExpectedSign(sign, milestone, week);
        bool? seen = course.Latest?.Assessment.Sign(sign);
        string value = seen switch { true => "yes", false => "no", _ => "not asked" } + (expected == true && seen != true ? "; expected by the milestone" : "");
        return new Judged(words, Truths.From(expected), [new Input(Signs.Questions[sign], value)])
        {
            IsExpected = expected == true && seen != true,
            Missing = expected is null ? $"ask: {Signs.Questions[sign]}" : null,
        };
    }

    private Judged Value(string measure, string words, Func<double, bool> holds, int week)
    {
        double? expected = course.Expected(measure, week);
        return new Judged(words, Truths.From(expected is double value ? holds(value) : null), [new Input(words.Split(" at ")[0], course.Words(measure, week))])
        {
            IsExpected = expected is not null && !holds(course.Expected(measure, 0)!.Value),
            Missing = expected is null ? $"measure: {words.Split(" at ")[0]}" : null,
        };
    }

    private static string Words(WeightBearing load) => load switch
    {
        WeightBearing.AsTolerated => "as tolerated",
        WeightBearing.None => "none",
        WeightBearing.Touch => "touch",
        WeightBearing.Partial => "partial",
        _ => "full",
    };
}
