using System.Collections.Immutable;
using Progression.Core.People;

namespace Progression.Core.Plans;

/// <summary>
/// A plan as it stands: a grid of post-op weeks by lanes. Immutable; every change makes another one. Cells of the checks band are computed and not kept.
/// </summary>
public sealed record PlanRevision
{
    private readonly DateOnly? _openFrom;

    /// <summary>The case it is for.</summary>
    public required CaseCode Code { get; init; }

    /// <summary>The day of the operation: day 0.</summary>
    public required DateOnly Operation { get; init; }

    /// <summary>Weeks of the grid, 1 to <see cref="PostOpWeek.Longest"/>; the columns are post-op weeks 1 to this.</summary>
    public required int Weeks { get; init; }

    /// <summary>First day that is planned. Days before it hold nothing: what is done is done.</summary>
    public required DateOnly From { get; init; }

    /// <summary>
    /// First day that can still be changed: the weeks before its week are done and stay as they were. The same as <see cref="From"/> until the plan is
    /// drafted over an earlier one.
    /// </summary>
    public DateOnly OpenFrom
    {
        get => _openFrom ?? From;
        init => _openFrom = value;
    }

    /// <summary>The id of the regimen its stim follows.</summary>
    public required string Regimen { get; init; }

    /// <summary>The version of the clinical library it was drafted from.</summary>
    public required string LibraryVersion { get; init; }

    /// <summary>Its lanes, top to bottom.</summary>
    public required ImmutableArray<Lane> Lanes { get; init; }

    /// <summary>Its cells; one that is missing is empty and not planned.</summary>
    public required ImmutableDictionary<CellAddress, PlanCell> Cells { get; init; }

    /// <summary>Why there is no stim on the plan; empty when there is.</summary>
    public ImmutableArray<string> StimBarred { get; init; } = [];

    /// <summary>What was decided on the latest proposal; null for a plan that came of no proposal.</summary>
    public PlanDecision? Decision { get; init; }

    /// <summary>The first post-op week that is planned.</summary>
    public int FirstWeek => PostOpWeek.Of(Operation, From);

    /// <summary>The first post-op week that can still be changed.</summary>
    public int FirstOpenWeek => PostOpWeek.Of(Operation, OpenFrom);

    /// <summary>The cell at an address; null where nothing is planned.</summary>
    public PlanCell? At(CellAddress address) => Cells.GetValueOrDefault(address);

    /// <summary>The content at an address; null where the cell is empty.</summary>
    public CellContent? ContentAt(string lane, int week) => At(new CellAddress(lane, week))?.Content;

    /// <summary>The lane with an id; null when the plan has none.</summary>
    public Lane? LaneOf(string id) => Lanes.FirstOrDefault(lane => lane.Id == id);

    /// <summary>The dates of a week that are planned: those from <see cref="From"/> on.</summary>
    public IEnumerable<DateOnly> PlannedDays(int week)
    {
        DateOnly start = PostOpWeek.Start(Operation, week);
        for (int day = 0; day < 7; day++)
        {
            DateOnly date = start.AddDays(day);
            if (date >= From)
            {
                yield return date;
            }
        }
    }

    /// <summary>The plan with a cell put in place of what was there.</summary>
    public PlanRevision With(CellAddress address, PlanCell cell) => this with { Cells = Cells.SetItem(address, cell) };
}
