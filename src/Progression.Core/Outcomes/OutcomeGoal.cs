using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Rules;
using Progression.Core.Statistics;

namespace Progression.Core.Outcomes;

/// <summary>Something a clinic waits for after an operation: that the lag has closed, or that a milestone is met by a reading.</summary>
/// <param name="Id">The milestone's id, or "lag-closed".</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Milestone">The milestone, with a measure and a target; null for the closing of the lag.</param>
public sealed record OutcomeGoal(string Id, string Title, Milestone? Milestone)
{
    /// <summary>The lag has closed as the ladder asks for it.</summary>
    public const string LagClosed = "lag-closed";

    private const double LeastDay = 0.5; // A reading on the day of the operation; a wait of nothing is none.
    private const double DaysPerWeek = 7;

    /// <summary>Every goal: the lag first, then the milestones that have a measure and a target, each value of a measure once.</summary>
    public static ImmutableArray<OutcomeGoal> All(ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        IEnumerable<Milestone> measured = library.Milestones.Where(one => one is { Measure: not null, Target: not null })
            .OrderByDescending(one => one.Drives).DistinctBy(one => (one.Measure, one.Target)); // Two of one value: the one the plan aims at.
        return
        [
            new(LagClosed, $"Extension lag closed, as the stim ladder asks (at most {library.Limit(LimitIds.LagClosed).Text}, confirmed)", null),
            .. measured.OrderBy(one => library.Measures[one.Measure!].Place).ThenBy(one => one.Week).Select(one => new OutcomeGoal(one.Id, one.Title, one)),
        ];
    }

    /// <summary>How long a case waited for it; null when the measure was never taken.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="states">Its assessments since the operation, oldest first.</param>
    /// <param name="library">The limits and measures.</param>
    public OutcomeWait? Of(Case patient, ImmutableArray<KneeState> states, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        string measure = Milestone?.Measure ?? MeasureIds.Lag;
        double before = 0;
        for (int at = 0; at < states.Length; at++)
        {
            if (states[at].OwnValue(measure) is not double value)
            {
                continue;
            }

            double week = Math.Max(LeastDay, PostOpWeek.DayOf(patient.Operation.Date, states[at].Date)) / DaysPerWeek;
            if (IsMet(patient, states[..(at + 1)], library, value))
            {
                return new OutcomeWait(new Followed(week, true), week - before);
            }

            before = week;
        }

        return before == 0 ? null : new OutcomeWait(new Followed(before, false), null);
    }

    private bool IsMet(Case patient, ImmutableArray<KneeState> states, ClinicalLibrary library, double value) => Milestone is { } milestone
        ? library.Measures[milestone.Measure!].Better == Direction.HigherIsBetter ? value >= milestone.Target : value <= milestone.Target
        : LagConditions.Closed(new LadderFacts(patient, library, states, Rung.HighVolume, patient.Operation.Date)).Truth == Truth.Holds;
}

/// <summary>How long one case waited.</summary>
/// <param name="Followed">In weeks since the operation: to the visit at which it was first seen, or to the last at which it was looked for.</param>
/// <param name="GapWeeks">Weeks from the visit before, or the operation, to the one at which it was seen: somewhere in between it came about; null when it was not seen.</param>
public sealed record OutcomeWait(Followed Followed, double? GapWeeks);
