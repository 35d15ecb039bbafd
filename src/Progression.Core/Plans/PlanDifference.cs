using System.Collections.Immutable;

namespace Progression.Core.Plans;

/// <summary>A cell that is another in two plans.</summary>
/// <param name="Address">Which cell.</param>
/// <param name="Before">The cell in the first plan; null where it has none.</param>
/// <param name="After">The cell in the second; null where it has none.</param>
public sealed record CellDifference(CellAddress Address, PlanCell? Before, PlanCell? After);

/// <summary>What differs between two plans of one case, as a person sees it: contents and pins. The engine's reasons are not compared.</summary>
public static class PlanDifference
{
    /// <summary>The cells that differ, lane by lane from the top and week by week.</summary>
    /// <param name="before">The first plan, for instance the saved or the signed one.</param>
    /// <param name="after">The second; its lanes give the order, and lanes that only the first has come last.</param>
    public static ImmutableArray<CellDifference> Between(PlanRevision before, PlanRevision after)
    {
        ImmutableArray<string> lanes = [.. after.Lanes.Concat(before.Lanes).Select(lane => lane.Id).Distinct()];
        return
        [
            .. before.Cells.Keys.Union(after.Cells.Keys)
                .Where(address => !AreSame(before.At(address), after.At(address)))
                .OrderBy(address => lanes.IndexOf(address.Lane)).ThenBy(address => address.Week)
                .Select(address => new CellDifference(address, before.At(address), after.At(address))),
        ];
    }

    /// <summary>Whether two cells hold the same and are pinned alike; one that is missing is an empty one that is not pinned.</summary>
    public static bool AreSame(PlanCell? one, PlanCell? other) => Equals(one?.Content, other?.Content) && Equals(one?.Pin, other?.Pin);
}
