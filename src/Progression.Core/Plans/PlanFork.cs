using System.Collections.Immutable;

namespace Progression.Core.Plans;

/// <summary>Who changed a cell of a plan that two people changed at the same time.</summary>
public enum ForkSide
{
    /// <summary>Only this person.</summary>
    Mine,

    /// <summary>Only the other.</summary>
    Theirs,

    /// <summary>Both, each in their own way: a person chooses.</summary>
    Both,

    /// <summary>The cell can no longer be changed; it stays as the other has it.</summary>
    Closed,
}

/// <summary>A cell that is another in two plans that were made from the same one.</summary>
/// <param name="Address">Which cell.</param>
/// <param name="Base">The cell in the plan both were made from; null where it has none.</param>
/// <param name="Mine">The cell in this person's plan; null where it has none.</param>
/// <param name="Theirs">The cell in the other's plan; null where it has none.</param>
/// <param name="Side">Who changed it.</param>
public sealed record ForkedCell(CellAddress Address, PlanCell? Base, PlanCell? Mine, PlanCell? Theirs, ForkSide Side);

/// <summary>Puts two plans together that were made from the same one.</summary>
public static class PlanFork
{
    /// <summary>The cells that differ, in the order of the grid.</summary>
    /// <param name="from">The plan both were made from.</param>
    /// <param name="mine">This person's.</param>
    /// <param name="theirs">The one that was saved first.</param>
    public static ImmutableArray<ForkedCell> Of(PlanRevision from, PlanRevision mine, PlanRevision theirs)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(mine);
        ArgumentNullException.ThrowIfNull(theirs);
        return
        [
            .. PlanDifference.Between(theirs, mine)
                .Select(cell => new ForkedCell(cell.Address, from.At(cell.Address), cell.After, cell.Before, Side(from, cell, theirs))),
        ];
    }

    /// <summary>The other's plan with some cells as this person has them; everything but cells is the other's.</summary>
    public static PlanRevision Joined(PlanRevision theirs, IEnumerable<ForkedCell> mine)
    {
        ArgumentNullException.ThrowIfNull(theirs);
        return PlanMerge.Take(theirs, mine.Select(cell => new MergeCell(cell.Address, cell.Theirs, cell.Mine, cell.Side == ForkSide.Closed ? MergeStanding.Closed : MergeStanding.Clean)));
    }

    /// <summary>Whether two plans differ in more than cells: weeks, lanes, regimen, where they begin.</summary>
    public static bool HaveOtherFrames(PlanRevision one, PlanRevision other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return (one.Weeks, one.From, one.OpenFrom, one.Regimen, one.LibraryVersion, one.Decision) != (other.Weeks, other.From, other.OpenFrom, other.Regimen, other.LibraryVersion, other.Decision)
            || !one.Lanes.SequenceEqual(other.Lanes) || !one.StimBarred.SequenceEqual(other.StimBarred);
    }

    private static ForkSide Side(PlanRevision from, CellDifference cell, PlanRevision theirs) =>
        PlanEdit.WhyNot(theirs, cell.Address) is not null ? ForkSide.Closed
        : PlanDifference.AreSame(from.At(cell.Address), cell.Before) ? ForkSide.Mine
        : PlanDifference.AreSame(from.At(cell.Address), cell.After) ? ForkSide.Theirs
        : ForkSide.Both;
}
