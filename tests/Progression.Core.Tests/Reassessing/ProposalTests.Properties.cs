using System.Collections.Immutable;
using Bogus;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Records.Plans;

namespace Progression.Core.Tests.Reassessing;

/// <summary>What holds for every proposal, tried on seeded cases whose plan was drafted before their last visit, some cells pinned.</summary>
public sealed partial class ProposalTests
{
    private static readonly ImmutableArray<(Knee Knee, Proposal Proposal)> Invented = [.. Made()];

    [Fact]
    public void The_invented_proposals_are_of_every_kind()
    {
        Assert.InRange(Invented.Length, 80, 160);
        Assert.Contains(Invented, one => one.Proposal.Changes.IsEmpty);
        Assert.Contains(Invented, one => one.Proposal.Changes.Any(change => change.IsPinned));
        Assert.Contains(Invented, one => one.Proposal.Changes.Any(change => change.New is null));
        Assert.Contains(Invented, one => one.Proposal.Standing.LaneOf("stim") is null != one.Proposal.Fresh.LaneOf("stim") is null);
        Assert.Contains(Invented, one => one.Proposal.Fresh.FirstOpenWeek > one.Proposal.Standing.FirstWeek);
    }

    [Fact]
    public void After_everything_was_taken_nothing_more_is_proposed()
    {
        foreach ((Knee knee, Proposal proposal) in Invented)
        {
            Assert.Empty(Of(proposal.AcceptAll(), knee).Open);
        }
    }

    [Fact]
    public void After_everything_was_refused_the_same_is_proposed_again()
    {
        foreach ((Knee knee, Proposal proposal) in Invented)
        {
            Assert.Equal(proposal.Changes.Select(Told), Of(proposal.Accept(Set(), "no"), knee).Changes.Select(Told));
        }
    }

    [Fact]
    public void Taken_one_by_one_it_comes_to_the_same_as_taken_whole()
    {
        foreach ((Knee knee, Proposal proposal) in Invented.Where((_, index) => index % 8 == 0))
        {
            PlanRevision plan = proposal.Standing;
            while (Of(plan, knee) is var left && left.Open.FirstOrDefault(change => change.With is null) is { } next)
            {
                plan = left.Accept(Set(next.Address), null);
            }

            if (!proposal.Open.Any())
            {
                continue;
            }

            Assert.Equal(PlanJson.Write(proposal.AcceptAll() with { Decision = null }), PlanJson.Write(plan with { Decision = null }));
        }
    }

    [Fact]
    public void Past_weeks_and_pins_stay_and_the_result_can_be_stored()
    {
        foreach ((_, Proposal proposal) in Invented)
        {
            PlanRevision next = proposal.AcceptAll();
            Assert.All(proposal.Standing.Cells.Where(pair => pair.Key.Week < proposal.Fresh.FirstOpenWeek), pair => Assert.Same(pair.Value, next.At(pair.Key)));
            Assert.All(proposal.Standing.Cells.Where(pair => pair.Value.IsPinned), pair => Assert.Equal((pair.Value.Content, pair.Value.Pin!.Reason), (next.At(pair.Key)!.Content, next.At(pair.Key)!.Pin!.Reason)));
            Assert.Equal(PlanJson.Write(next), PlanJson.Write(PlanJson.Read(PlanJson.Write(next))));
        }
    }

    [Fact]
    public void Every_change_says_why_names_the_assessment_and_how_sure_it_is()
    {
        foreach ((_, Proposal proposal) in Invented)
        {
            Assert.All(proposal.Changes, change =>
            {
                Assert.StartsWith($"Assessment of {proposal.Assessment:yyyy-MM-dd}: ", change.Reason, StringComparison.Ordinal);
                Assert.NotEmpty(change.Confidence);
                Assert.InRange(change.Address.Week, proposal.Fresh.FirstOpenWeek, proposal.Fresh.Weeks);
            });
        }
    }

    private static IEnumerable<(Knee, Proposal)> Made()
    {
        Faker faker = new() { Random = new Randomizer(4) };
        foreach (Knee knee in InventedKnees.Some(160).Where(one => !one.Case.Assessments.IsEmpty))
        {
            Knee before = new(knee.Case with { Assessments = knee.Case.Assessments[..^1] });
            before = faker.Random.Bool(0.1f) ? before.Screened("clot", Answer.Yes) : before;
            PlanRevision standing = before.Draft();
            ImmutableArray<CellAddress> cells = [.. standing.Cells.Keys.OrderBy(cell => cell.Week).ThenBy(cell => cell.Lane, StringComparer.Ordinal)];
            foreach (CellAddress cell in faker.Random.Bool(0.3f) ? faker.Random.ListItems(cells, Math.Min(4, cells.Length)) : [])
            {
                standing = PlanEdit.Set(standing, cell, faker.Random.Bool() ? null : standing.At(cell)!.Content, "a reason");
            }

            if (Proposal.Of(standing, knee.Case, Knee.Library).Value is { } proposal)
            {
                yield return (knee, proposal);
            }
        }
    }
}
