using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Rules;

/// <summary>
/// What the knee is expected to do week by week if it follows the library's milestones from where it is now. A course of goals, not a forecast:
/// between two milestones it goes straight; a knee that is behind is taken to stay as many weeks behind; one that is ahead keeps what it has.
/// </summary>
public sealed class ExpectedCourse
{
    private const double Step = 0.1;

    private readonly ClinicalLibrary _library;
    private readonly Case _patient;
    private readonly ImmutableArray<KneeState> _states;
    private readonly Dictionary<string, ImmutableArray<Milestone>> _driving;
    private readonly Dictionary<string, KneeState> _last = [];
    private readonly Dictionary<string, double> _delays = [];

    /// <summary>The course of a case from what was assessed up to a day.</summary>
    public ExpectedCourse(Case patient, ClinicalLibrary library, DateOnly upTo)
    {
        (_patient, _library) = (patient, library);
        _states = [.. patient.Assessments.Where(one => one.Date <= upTo).Select(one => KneeState.At(one, patient))];
        _driving = library.Milestones.Where(one => one is { Drives: true, Measure: not null, Target: not null })
            .GroupBy(one => one.Measure!)
            .ToDictionary(group => group.Key, group => group.OrderBy(one => one.Week).ToImmutableArray());
        foreach (string measure in _driving.Keys.Append(MeasureIds.Index))
        {
            if (_states.LastOrDefault(state => state.Value(measure) is not null) is { } last)
            {
                (_last[measure], _delays[measure]) = (last, Behind(measure, last));
            }
        }
    }

    /// <summary>The latest assessment; null when there is none.</summary>
    public KneeState? Latest => _states.IsEmpty ? null : _states[^1];

    /// <summary>The goal of a measure at a number of weeks since the operation; null when no milestone drives it.</summary>
    public double? Target(string measure, double weeks)
    {
        if (!_driving.TryGetValue(measure, out ImmutableArray<Milestone> points))
        {
            return null;
        }

        int next = 0;
        while (next < points.Length && points[next].Week < weeks)
        {
            next++;
        }

        if (next == 0 || next == points.Length)
        {
            return points[Math.Min(next, points.Length - 1)].Target;
        }

        (Milestone before, Milestone after) = (points[next - 1], points[next]);
        double share = (weeks - before.Week) / (after.Week - before.Week);
        return before.Target + (share * (after.Target - before.Target));
    }

    /// <summary>The milestones between which the goal of a week lies.</summary>
    public ImmutableArray<Milestone> Around(string measure, double weeks)
    {
        if (!_driving.TryGetValue(measure, out ImmutableArray<Milestone> points))
        {
            return [];
        }

        Milestone? before = points.LastOrDefault(one => one.Week <= weeks);
        Milestone? after = points.FirstOrDefault(one => one.Week >= weeks);
        return [.. new[] { before, after }.OfType<Milestone>().Distinct()];
    }

    /// <summary>
    /// What is expected of a measure at the end of a week; null when it was never measured, or is neither driven by a milestone nor the index. For the week of the latest
    /// reading and before, the reading itself.
    /// </summary>
    public double? Expected(string measure, int week)
    {
        KneeState? last = LastWith(measure);
        if (last is null)
        {
            return null;
        }

        double now = last.Value(measure)!.Value;
        if (week <= last.Week || Target(measure, week) is not double)
        {
            return now;
        }

        double shifted = Target(measure, week - Delay(measure))!.Value;
        return IsBetter(measure, now, shifted) ? now : shifted;
    }

    /// <summary>How many weeks the latest reading is behind the course of goals; 0 when it is on it or ahead, or was not measured.</summary>
    public double Delay(string measure) => _delays.GetValueOrDefault(measure);

    /// <summary>
    /// Whether a sign may be expected in a week: it was seen at the latest assessment that asked, or the milestone it belongs to is due by then. A sign
    /// answered no is expected only from the week after, and only once the milestone is due. Null when it was never asked and no milestone is due.
    /// </summary>
    public bool? ExpectedSign(string sign, string milestone, int week)
    {
        KneeState? asked = _states.LastOrDefault(state => state.Assessment.Sign(sign) is not null);
        if (asked?.Assessment.Sign(sign) == true)
        {
            return true;
        }

        bool due = week > (_library.Milestones.FirstOrDefault(one => one.Id == milestone)?.Week ?? double.PositiveInfinity);
        return asked is null ? (due ? true : null) : due && week > asked.Week;
    }

    /// <summary>The value expected in a week as a text: measured, or expected with the delay.</summary>
    public string Words(string measure, int week)
    {
        if (Expected(measure, week) is not double value)
        {
            return "not measured";
        }

        string unit = _library.Measures[measure].Unit;
        KneeState last = LastWith(measure)!;
        string amount = $"{Number.Text(value, 1)} {unit}".TrimEnd();
        return week <= last.Week ? $"{amount}, measured {LadderFacts.Day(last.Date)}"
            : Delay(measure) > 0 ? $"{amount} expected, {Number.Text(Delay(measure), 1)} weeks behind the milestones"
            : $"{amount} expected by the milestones";
    }

    private KneeState? LastWith(string measure) => _last.GetValueOrDefault(measure);

    /// <summary>Weeks since the goal of the course was as good as the reading, no earlier than the first milestone.</summary>
    private double Behind(string measure, KneeState last)
    {
        if (!_driving.TryGetValue(measure, out ImmutableArray<Milestone> points))
        {
            return 0;
        }

        double now = last.Value(measure)!.Value;
        double at = Math.Max(points[0].Week, PostOpWeek.DayOf(_patient.Operation.Date, last.Date) / 7.0);
        double reached = at;
        while (reached > points[0].Week && IsBetter(measure, Target(measure, reached)!.Value, now))
        {
            reached -= Step;
        }

        return Math.Round(at - Math.Max(reached, points[0].Week), 1);
    }

    private bool IsBetter(string measure, double one, double other) =>
        _library.Measures[measure].Better == Direction.HigherIsBetter ? one > other : one < other;
}
