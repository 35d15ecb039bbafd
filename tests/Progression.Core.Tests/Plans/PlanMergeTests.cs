using System.Collections.Immutable;
using Progression.Core.Plans;

namespace Progression.Core.Tests.Plans;

public sealed class PlanMergeTests
{
    private static readonly PlanRevision From = Knee.Well.Draft();
    private static readonly CellAddress One = new("flexion", 3);
    private static readonly CellAddress Other = new("flexion", 5);

    [Fact]
    public void Plans_that_are_the_same_differ_in_nothing_and_a_pin_alone_is_a_difference()
    {
        Assert.Empty(PlanDifference.Between(From, From));
        PlanRevision pinned = PlanEdit.Set(From, One, From.At(One)!.Content);
        CellDifference difference = Assert.Single(PlanDifference.Between(From, pinned));
        Assert.Equal((One, false, true), (difference.Address, difference.Before!.IsPinned, difference.After!.IsPinned));
        Assert.Empty(PlanDifference.Between(From, PlanEdit.Unpin(pinned, One)));
    }

    [Fact]
    public void Differences_come_lane_by_lane_and_week_by_week()
    {
        PlanRevision changed = Set(Set(Set(From, new("calf", 2), null), Other, 61), One, 60);
        Assert.Equal([One, Other, new CellAddress("calf", 2)], PlanDifference.Between(From, changed).Select(cell => cell.Address));
    }

    [Fact]
    public void What_only_the_draft_changed_is_clean_and_what_both_changed_is_a_conflict()
    {
        PlanRevision draft = Set(Set(From, One, 60), Other, 61);
        PlanRevision now = Set(Set(From, One, 70), new("flexion", 6), 71);
        ImmutableArray<MergeCell> cells = PlanMerge.Of(From, draft, now);
        Assert.Equal([(One, MergeStanding.Conflict), (Other, MergeStanding.Clean)], cells.Select(cell => (cell.Address, cell.Standing)));
        PlanRevision merged = PlanMerge.Take(now, cells.Where(cell => cell.Standing == MergeStanding.Clean));
        Assert.Equal((70, 61, 71), (Target(merged, One), Target(merged, Other), Target(merged, new("flexion", 6))));
    }

    [Fact]
    public void What_both_changed_alike_is_no_question() => Assert.Empty(PlanMerge.Of(From, Set(From, One, 60), Set(From, One, 60)));

    [Fact]
    public void Without_what_it_was_made_from_every_difference_is_a_question() =>
        Assert.Equal([MergeStanding.Conflict], PlanMerge.Of(null, Set(From, One, 60), From).Select(cell => cell.Standing));

    [Fact]
    public void A_week_that_is_done_is_not_changed_by_a_draft()
    {
        PlanRevision now = From with { OpenFrom = From.Operation.AddDays(28) };
        MergeCell cell = Assert.Single(PlanMerge.Of(From, Set(From, One, 60), now));
        Assert.Equal(MergeStanding.Closed, cell.Standing);
        Assert.Equal(Target(From, One), Target(PlanMerge.Take(now, [cell]), One));
    }

    private static PlanRevision Set(PlanRevision plan, CellAddress address, double? target) => PlanEdit.Set(plan, address, target is { } value ? new TargetCell(value) : null);

    private static double? Target(PlanRevision plan, CellAddress address) => (plan.At(address)?.Content as TargetCell)?.Value;
}
