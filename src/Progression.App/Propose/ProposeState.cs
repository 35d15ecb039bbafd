using System.Collections.Immutable;
using Progression.App.Actions;
using Progression.Core.Plans;
using Progression.Core.Reassessing;

namespace Progression.App.Propose;

/// <summary>The proposal after an assessment at one moment: what is proposed and which of it is taken so far. Nothing is decided before it is accepted.</summary>
public sealed record ProposeState
{
    /// <summary>What is decided on.</summary>
    public required ProposeDesk Desk { get; init; }

    /// <summary>The change under the cursor, from 0; 0 where there is none.</summary>
    public int Index { get; init; }

    /// <summary>The cells whose change is taken so far.</summary>
    public ImmutableHashSet<CellAddress> Taken { get; init; } = [];

    /// <summary>The reason being typed; null outside <see cref="ProposeMode.Reason"/>.</summary>
    public LineEntry? Reason { get; init; }

    /// <summary>What the keys mean.</summary>
    public ProposeMode Mode { get; init; }

    /// <summary>The mode to go back to from the help page.</summary>
    public ProposeMode HelpFor { get; init; }

    /// <summary>Lines of a page or of the pane that are scrolled past.</summary>
    public int Scroll { get; init; }

    /// <summary>The last thing told to the person.</summary>
    public string Status { get; init; } = "";

    /// <summary>The change under the cursor; null when there is none.</summary>
    public ProposedChange? Chosen => Desk.Changes.IsEmpty ? null : Desk.Changes[Index];

    /// <summary>The screen at its start: nothing is taken.</summary>
    public static ProposeState Open(ProposeDesk desk) => new() { Desk = desk };

    /// <summary>The state with the cursor on another change; stays at the ends.</summary>
    public ProposeState To(int index) => this with { Index = Math.Clamp(index, 0, Math.Max(0, Desk.Changes.Length - 1)), Scroll = 0, Status = "" };

    /// <summary>The lane of a cell; null when no plan has it.</summary>
    public Lane? LaneOf(CellAddress address) => Desk.Lanes.FirstOrDefault(lane => lane.Id == address.Lane);

    /// <summary>A cell as a person calls it: "Stim, week 4".</summary>
    public string Place(CellAddress address) => $"{LaneOf(address)?.Title ?? address.Lane}, week {address.Week}";

    /// <summary>A content in the notation of the grid; "empty" where there is none.</summary>
    public string Text(CellAddress address, CellContent? content) =>
        content is null || LaneOf(address) is not { } lane ? "empty" : CellNotation.Text(lane, content, Desk.Library);
}
