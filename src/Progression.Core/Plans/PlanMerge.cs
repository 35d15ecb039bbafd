using System.Collections.Immutable;

namespace Progression.Core.Plans;

/// <summary>How a change of a draft stands to a plan that may have gone on without it.</summary>
public enum MergeStanding
{
    /// <summary>Only the draft changed the cell.</summary>
    Clean,

    /// <summary>Both changed it, each in its own way, or it is not known what the draft was made from: a person chooses.</summary>
    Conflict,

    /// <summary>The cell can no longer be changed.</summary>
    Closed,
}

/// <summary>A cell that a draft has otherwise than the plan now.</summary>
/// <param name="Address">Which cell.</param>
/// <param name="Now">The cell in the plan now; null where it has none.</param>
/// <param name="Draft">The cell in the draft; null where it has none.</param>
/// <param name="Standing">Whether the draft's can be taken.</param>
public sealed record MergeCell(CellAddress Address, PlanCell? Now, PlanCell? Draft, MergeStanding Standing);

/// <summary>Brings the changes of a draft into a plan, cell by cell.</summary>
public static class PlanMerge
{
    /// <summary>The cells that the draft changed and that the plan now does not have so already.</summary>
    /// <param name="from">What the draft was made from; null when that is not known.</param>
    /// <param name="draft">The draft.</param>
    /// <param name="now">The plan as it is now.</param>
    public static ImmutableArray<MergeCell> Of(PlanRevision? from, PlanRevision draft, PlanRevision now)
    {
        ImmutableHashSet<CellAddress> changed = [.. PlanDifference.Between(from ?? now, draft).Select(cell => cell.Address)];
        return
        [
            .. PlanDifference.Between(now, draft).Where(cell => changed.Contains(cell.Address))
                .Select(cell => new MergeCell(cell.Address, cell.Before, cell.After, StandingOf(from, now, cell.Address))),
        ];
    }

    /// <summary>The plan now with some of the draft's cells.</summary>
    public static PlanRevision Take(PlanRevision now, IEnumerable<MergeCell> cells) => cells.Where(cell => cell.Standing != MergeStanding.Closed)
        .Aggregate(now, (plan, cell) => cell.Draft is { } draft ? plan.With(cell.Address, draft) : plan with { Cells = plan.Cells.Remove(cell.Address) });

    private static MergeStanding StandingOf(PlanRevision? from, PlanRevision now, CellAddress address) =>
        PlanEdit.WhyNot(now, address) is not null ? MergeStanding.Closed
        : from is not null && PlanDifference.AreSame(from.At(address), now.At(address)) ? MergeStanding.Clean : MergeStanding.Conflict;
}
