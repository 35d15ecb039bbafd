using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;

namespace Progression.Core.Caseload;

/// <summary>
/// The milestones as a course of goals, and who is behind it: a latest reading that falls short of the goal of its own day by more than the guard band of
/// one reading. Nothing is behind before its first milestone is due, nor where the error of the measure is not known. Milestones of measures that <see cref="VisitFacts"/> does not keep are not read.
/// </summary>
internal sealed class GoalCourse
{
    private readonly ImmutableArray<(Measure Measure, Func<VisitFacts, double?> Value, ImmutableArray<Milestone> Points, double? Band)> _lanes;

    internal GoalCourse(ClinicalLibrary library)
    {
        double guard = library.Limit(LimitIds.LagGuardSems).Value;
        (string Id, Func<VisitFacts, double?> Value)[] kept =
        [
            (MeasureIds.FlexionActive, visit => visit.Flexion), (MeasureIds.ExtensionPassive, visit => visit.ExtensionPassive), (MeasureIds.Lag, visit => visit.Lag),
            (MeasureIds.ExtensionActive, visit => visit.ExtensionActive), (MeasureIds.PreOpShare, visit => visit.PreOpShare), (MeasureIds.Index, visit => visit.Index),
        ];
        _lanes =
        [
            .. from lane in kept
               let points = library.Milestones.Where(one => one is { Drives: true, Target: not null } && one.Measure == lane.Id).OrderBy(one => one.Week).ToImmutableArray()
               where !points.IsEmpty
               let error = lane.Id == MeasureIds.Lag ? MeasurementError.OfLag(library) : library.Measures[lane.Id].StandardError
               select (library.Measures[lane.Id], lane.Value, points, guard * error),
        ];
    }

    internal ImmutableArray<BehindGoal> Behind(CaseFacts facts)
    {
        ImmutableArray<BehindGoal>.Builder? behind = null;
        foreach ((Measure measure, Func<VisitFacts, double?> value, ImmutableArray<Milestone> points, double? band) in _lanes)
        {
            for (int visit = facts.Visits.Length - 1; visit >= 0; visit--)
            {
                if (value(facts.Visits[visit]) is double now)
                {
                    double goal = Goal(points, facts.Visits[visit].Day / 7.0);
                    if (facts.Visits[visit].Day >= 7 * points[0].Week && GuardBand.Shortfall(measure, now, goal) > band)
                    {
                        (behind ??= ImmutableArray.CreateBuilder<BehindGoal>()).Add(new BehindGoal(measure, now, goal, facts.Visits[visit].Day));
                    }

                    break;
                }
            }
        }

        return behind?.ToImmutable() ?? [];
    }

    /// <summary>The goal at a number of weeks: in a straight line between two milestones, level after the last.</summary>
    private static double Goal(ImmutableArray<Milestone> points, double weeks)
    {
        int next = 0;
        while (next < points.Length && points[next].Week < weeks)
        {
            next++;
        }

        if (next == 0 || next == points.Length)
        {
            return points[Math.Min(next, points.Length - 1)].Target!.Value;
        }

        (Milestone before, Milestone after) = (points[next - 1], points[next]);
        double share = (weeks - before.Week) / (after.Week - before.Week);
        return before.Target!.Value + (share * (after.Target!.Value - before.Target.Value));
    }
}
