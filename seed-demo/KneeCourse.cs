using System.Collections.Immutable;
using Bogus;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.SeedDemo;

/// <summary>The readings of an invented knee: the library's milestones, the story's delay and exceptions, and noise.</summary>
internal sealed class KneeCourse
{
    private readonly KneeStory _story;
    private readonly Case _bare;
    private readonly Randomizer _chance;
    private readonly ExpectedCourse _milestones;
    private readonly double _before;
    private readonly double _other;

    /// <summary>The course of a case that has no readings yet.</summary>
    public KneeCourse(KneeStory story, Case bare, ClinicalLibrary library, Randomizer chance)
    {
        (_story, _bare, _chance) = (story, bare, chance);
        _milestones = new ExpectedCourse(bare, library, bare.Operation.Date);
        // About 1 Nm/kg before the operation, the other leg about a third more: plausible, not measured on anybody.
        _before = Math.Round(bare.BodyMass!.Kilograms * chance.Double(0.95, 1.15));
        _other = Math.Round(_before * chance.Double(1.25, 1.4));
    }

    /// <summary>What was measured before the operation.</summary>
    public Assessment PreOp()
    {
        double deficit = _chance.Int(3, 6);
        double flexion = _chance.Int(108, 122);
        return new(_bare.Operation.Date.AddDays(-_chance.Int(7, 28)), Sorted(
        [
            (MeasureIds.FlexionActive, flexion), (MeasureIds.FlexionPassive, flexion + _chance.Int(2, 5)),
            (MeasureIds.ExtensionPassive, deficit), (MeasureIds.ExtensionActive, deficit + _chance.Int(0, 1)),
            (MeasureIds.QuadricepsTorque, _before), (MeasureIds.OtherTorque, _other),
            (MeasureIds.PainActivity, _chance.Int(5, 7)), ("timed_up_and_go", Math.Round(_chance.Double(9, 13), 1)),
        ]), ImmutableSortedDictionary<string, Answer>.Empty)
        {
            Rater = _bare.Therapist,
        };
    }

    /// <summary>The assessment of a post-op day.</summary>
    public Assessment Visit(int day)
    {
        ImmutableSortedDictionary<string, Reading> readings = Sorted(
            [.. Usual(day), .. _story.Readings.Where(one => one.Day == day).Select(one => (one.Measure, one.Value))]);
        return new(_bare.Operation.Date.AddDays(day), readings, Signs(day, readings)) { Rater = _bare.Therapist };
    }

    private IEnumerable<(string Measure, double Value)> Usual(int day)
    {
        double weeks = Math.Max(0.3, (day / 7.0) - _story.Behind);
        double early = Math.Max(0, 1 - weeks); // The milestones begin at week 1; before it a knee is worse than there.
        double flexion = Math.Round(Goal(MeasureIds.FlexionActive, weeks) - (30 * early) + _chance.Double(-2, 2));
        double deficit = Math.Max(0, Math.Round(Goal(MeasureIds.ExtensionPassive, weeks) + (5 * early) + _chance.Double(-1.5, 0.5)));
        double lag = Math.Max(0, Math.Round(Goal(MeasureIds.Lag, weeks) + (10 * early) + _chance.Double(-1.5, 0.5)));
        double share = Goal(MeasureIds.PreOpShare, weeks) / 100 * (1 - (0.3 * early)) * _chance.Double(0.97, 1.03);
        double rest = Math.Max(0, Math.Round(4 - (0.7 * weeks)));
        return
        [
            (MeasureIds.FlexionActive, flexion), (MeasureIds.FlexionPassive, flexion + _chance.Int(4, 7)),
            (MeasureIds.ExtensionPassive, deficit), (MeasureIds.ExtensionActive, deficit + lag),
            (MeasureIds.QuadricepsTorque, Math.Round(_before * share, 1)), (MeasureIds.OtherTorque, Math.Round(_other * _chance.Double(0.97, 1.03))),
            (MeasureIds.StraightLegRaises, weeks < 1 ? 2 : weeks < 1.8 ? 6 : 10),
            (MeasureIds.Effusion, weeks < 1 ? 3 : weeks < 2.5 ? 2 : weeks < 7 ? 1 : 0),
            (MeasureIds.PainRest, rest), (MeasureIds.PainActivity, Math.Max(1, Math.Round(6 - (0.7 * weeks)))), (MeasureIds.PainNextMorning, rest),
        ];
    }

    private ImmutableSortedDictionary<string, Answer> Signs(int day, ImmutableSortedDictionary<string, Reading> readings)
    {
        Dictionary<string, Answer> seen = new()
        {
            [Core.People.Signs.ContractionVisible] = Answer.Yes,
            [Core.People.Signs.SensationNormal] = Answer.Yes,
            [Core.People.Signs.StraightLegRaise] = readings[MeasureIds.StraightLegRaises].Value > 0 ? Answer.Yes : Answer.No,
            [Core.People.Signs.LagGrows] = readings[MeasureIds.StraightLegRaises].Value < 10 ? Answer.Yes : Answer.No,
            [Core.People.Signs.SettledByMorning] = Answer.Yes,
            [Core.People.Signs.PopFallOrGap] = Answer.No,
            [Core.People.Signs.ClotSigns] = Answer.No,
            [Core.People.Signs.InfectionSigns] = Answer.No,
            [Core.People.Signs.UrgentSigns] = Answer.No,
        };
        if (_story.StimFrom < day)
        {
            seen[Core.People.Signs.StimContraction] = Answer.Yes;
        }

        foreach ((_, string sign, Answer answer) in _story.Signs.Where(one => one.Day == day))
        {
            seen[sign] = answer;
        }

        return seen.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }

    private double Goal(string measure, double weeks) => _milestones.Target(measure, weeks)
        ?? throw new InvalidOperationException($"No milestone of the library drives {measure}.");

    /// <summary>The readings by measure; a later one replaces an earlier one.</summary>
    private static ImmutableSortedDictionary<string, Reading> Sorted(IEnumerable<(string Measure, double Value)> readings)
    {
        Dictionary<string, Reading> last = new(StringComparer.Ordinal);
        foreach ((string measure, double value) in readings)
        {
            last[measure] = measure is MeasureIds.QuadricepsTorque or MeasureIds.OtherTorque ? Torque(measure, value) : new Reading(measure, value);
        }

        return last.ToImmutableSortedDictionary(StringComparer.Ordinal);
    }

    /// <summary>Three trials about their mean.</summary>
    private static Reading Torque(string measure, double mean) => Reading.OfTrials(measure, [mean - 1, mean + 0.5, mean + 0.5]) with
    {
        Device = "Hand-held dynamometer with belt",
        Position = "Sitting, knee at 60 deg",
    };
}
