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
    private const int LongestAgo = 60; // Days: a plan has six weeks or more, so some have ended.

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

    /// <summary>A caseload of any size for trying out lists: the same situations again and again, each knee at its own point of the weeks around the present day.</summary>
    /// <param name="count">How many cases.</param>
    /// <param name="today">The day; no operation or assessment lies after it.</param>
    /// <param name="library">As for <see cref="Make"/>.</param>
    public static IEnumerable<Case> Crowd(int count, DateOnly today, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(library);
        Randomizer chance = new(Seed);
        for (int number = 1; number <= count; number++)
        {
            DateOnly then = today.AddDays(-chance.Int(0, LongestAgo));
            ImmutableArray<KneeStory> stories = DemoStories.On(then);
            KneeStory story = stories[chance.Int(0, stories.Length - 1)] with { Code = $"K-{number:000000}" };
            yield return new InventedKnee(story, then, library, new Randomizer(Seed + number)).Make();
        }
    }
}
