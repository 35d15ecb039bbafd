using System.Collections.Immutable;
using Bogus;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.SeedDemo;

/// <summary>
/// The invented caseload of a knee clinic that does not exist: a dozen knees, each in another situation of the work. No person, clinic or device behind
/// any of it.
/// </summary>
public static class DemoCaseload
{
    private const int Seed = 7301;

    /// <summary>
    /// The case whose plan is shown first: in its fourth week, with weeks behind it and weeks ahead. Its next reassessment is due, six days after the lag
    /// closed for the first time; another like it opens the step down, against which the present week is pinned.
    /// </summary>
    public const string Showcase = "LARK-03";

    /// <summary>A case as it stood after its first visit since the operation, before any stim.</summary>
    public static Case AtFirstVisit(Case now)
    {
        ArgumentNullException.ThrowIfNull(now);
        return now with { Assessments = now.Assessments[..1], Sessions = [] };
    }

    /// <summary>The showcase's plan after a therapist's own change: one more week at the full dose, with the reason.</summary>
    /// <param name="drafted">Its plan as drafted.</param>
    public static PlanRevision WithOwnChange(PlanRevision drafted)
    {
        ArgumentNullException.ThrowIfNull(drafted);
        const string Reason = "One more week twice a day: the lag has closed once, not yet twice.";
        return new[] { Lanes.Stim, Lanes.WithStim }.Where(lane => drafted.LaneOf(lane) is not null).Aggregate(
            drafted, (plan, lane) => PlanEdit.Set(plan, new CellAddress(lane, 4), plan.ContentAt(lane, 3), Reason));
    }

    /// <summary>The caseload as it stands on a day, the showcase first. The same day and library give the same caseload.</summary>
    /// <param name="today">The day; operations and assessments lie before it, none after it.</param>
    /// <param name="library">Gives the screening items and the milestones the knees recover along.</param>
    /// <exception cref="InvalidOperationException">A clinic's own library has no milestone that drives flexion, extension, lag or strength.</exception>
    public static ImmutableArray<Case> Make(DateOnly today, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        return [.. DemoStories.On(today).Select((story, index) => new InventedKnee(story, today, library, new Randomizer(Seed + index)).Make())];
    }
}
