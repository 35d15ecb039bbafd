using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Going through the list of findings.</summary>
public static class GridFindings
{
    /// <summary>Opens the list at the worst finding of the cell under the cursor, or at the worst of all.</summary>
    public static GridState Open(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        Finding? here = state.FindingsOn(state.Cursor).FirstOrDefault();
        return state with { Mode = GridMode.Findings, FindingIndex = here is null ? 0 : state.Findings.IndexOf(here), Status = "" };
    }

    /// <summary>The finding chosen in the list; null when there is none left.</summary>
    public static Finding? Chosen(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Findings.IsEmpty ? null : state.Findings[Math.Clamp(state.FindingIndex, 0, state.Findings.Length - 1)];
    }

    /// <summary>The list with another finding chosen; stays at its ends.</summary>
    public static GridState Choose(GridState state, int index)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { FindingIndex = Math.Clamp(index, 0, Math.Max(0, state.Findings.Length - 1)), Status = "" };
    }

    /// <summary>The worst finding of the cell under the cursor that offers a cure, else its worst; null when it has none.</summary>
    public static Finding? Curable(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        List<Finding> here = [.. state.FindingsOn(state.Cursor)];
        return here.FirstOrDefault(finding => finding.Cure is { Changes.IsEmpty: false }) ?? here.FirstOrDefault();
    }

    /// <summary>Why the grid cannot show the chosen finding; null when it can.</summary>
    public static string? WhyNotGo(GridState state) =>
        Chosen(state) is not { } finding ? "There is no finding."
        : finding.Cells.IsEmpty ? "This finding concerns the whole plan, not one cell."
        : state.Plan.LaneOf(finding.Cells[0].Lane) is null ? "This finding concerns a lane that the plan does not have."
        : null;

    /// <summary>The cursor on the first cell of the chosen finding, in the grid.</summary>
    public static GridState Go(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        Finding finding = Chosen(state)!;
        return GridMoves.To(state with { Mode = GridMode.Grid }, finding.Cells[0]) with { Status = FindingWords.Line(finding) };
    }

    /// <summary>The cursor on the next or previous cell of the chosen finding, going round; the list stays open.</summary>
    public static GridState Along(GridState state, int step)
    {
        ArgumentNullException.ThrowIfNull(state);
        Finding finding = Chosen(state)!;
        int at = finding.Cells.IndexOf(state.Cursor);
        int next = at < 0 ? 0 : (at + step + finding.Cells.Length) % finding.Cells.Length;
        CellAddress cell = finding.Cells[next];
        return GridMoves.To(state, cell) with
        {
            Status = $"Cell {next + 1} of {finding.Cells.Length}: {state.Plan.LaneOf(cell.Lane)?.Title ?? cell.Lane}, week {cell.Week}.",
        };
    }
}
