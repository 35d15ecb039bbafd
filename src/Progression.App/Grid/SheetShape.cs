using System.Collections.Immutable;
using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>How the grid is cut to a room: which weeks, how wide, and which lines for which lane.</summary>
public sealed record SheetShape
{
    private const int NarrowName = 14;
    private const int WideName = 22;
    private const int LeastCell = 10;
    private const int LeastCloseCell = 20;
    private const int MostCell = 36;
    private const int OneLineCell = 30;
    private const int RoomyCell = 17;

    private SheetShape()
    {
    }

    /// <summary>Columns of the lane names, which stay while the weeks move.</summary>
    public required int NameWidth { get; init; }

    /// <summary>Columns of a cell, without the line to its left.</summary>
    public required int CellWidth { get; init; }

    /// <summary>The first week shown, from 1.</summary>
    public required int FirstWeek { get; init; }

    /// <summary>How many weeks are shown.</summary>
    public required int Weeks { get; init; }

    /// <summary>All lines of the grid under its header, top to bottom, whether or not there is room for them.</summary>
    public required ImmutableArray<SheetLine> Lines { get; init; }

    /// <summary>Whether stim and exercises take two lines: what above, how much below.</summary>
    public bool TwoLines => CellWidth < OneLineCell;

    /// <summary>Whether full lane names fit.</summary>
    public bool FullNames => NameWidth == WideName;

    /// <summary>The shape of a grid in a width.</summary>
    /// <param name="state">The grid; its cursor decides which weeks are shown.</param>
    /// <param name="width">Columns for names and cells.</param>
    public static SheetShape Of(GridState state, int width)
    {
        ArgumentNullException.ThrowIfNull(state);
        int name = width >= WideName + (6 * (RoomyCell + 1)) ? WideName : NarrowName;
        int least = (state.Close ? LeastCloseCell : LeastCell) + 1;
        int shown = Math.Clamp((width - name) / least, 1, state.Plan.Weeks);
        int cell = Math.Min(((width - name) / shown) - 1, MostCell);
        SheetShape bare = new()
        {
            NameWidth = name,
            CellWidth = cell,
            FirstWeek = 1 + Paging.First(state.Week - 1, shown, state.Plan.Weeks),
            Weeks = shown,
            Lines = [],
        };
        return bare with { Lines = [.. LinesOf(state.Plan, bare.TwoLines)] };
    }

    private static IEnumerable<SheetLine> LinesOf(PlanRevision plan, bool twoLines)
    {
        for (int at = 0; at < plan.Lanes.Length; at++)
        {
            Lane lane = plan.Lanes[at];
            if (lane.Band == Band.Active && at > 0 && plan.Lanes[at - 1].Band == Band.Milestones && !plan.StimBarred.IsEmpty)
            {
                yield return new(SheetPart.Barred, at);
            }

            if (at == 0 || plan.Lanes[at - 1].Band != lane.Band)
            {
                yield return new(SheetPart.Heading, at);
            }
            bool used = Enumerable.Range(1, plan.Weeks).Any(week => plan.ContentAt(lane.Id, week) is not null);
            if (twoLines && used && (lane.Band is Band.Stim or Band.Active || lane.Id == Lanes.Seen))
            {
                yield return new(SheetPart.Upper, at);
                yield return new(SheetPart.Lower, at);
            }
            else
            {
                yield return new(SheetPart.Whole, at);
            }
        }
    }
}

/// <summary>What a line of the grid shows.</summary>
public enum SheetPart
{
    /// <summary>The name of the band that begins here.</summary>
    Heading,

    /// <summary>In place of the stim band: why there is none.</summary>
    Barred,

    /// <summary>A lane in one line.</summary>
    Whole,

    /// <summary>The upper of a lane's two lines: what.</summary>
    Upper,

    /// <summary>The lower of a lane's two lines: how much.</summary>
    Lower,
}

/// <summary>A line of the grid.</summary>
/// <param name="Part">What it shows.</param>
/// <param name="LaneIndex">Its lane, from 0; for a heading the band's first, for barred stim the lane below.</param>
public sealed record SheetLine(SheetPart Part, int LaneIndex)
{
    /// <summary>Whether it shows cells.</summary>
    public bool HasCells => Part is SheetPart.Whole or SheetPart.Upper or SheetPart.Lower;
}
