using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Actions;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Grid;

/// <summary>
/// A line of the grid that is being typed, as texts on disk, and back: a cell's content, a reason, for how many weeks a cell is filled on, or what is said in
/// the review.
/// </summary>
public static class CellDraft
{
    /// <summary>Names the line among the forms of a case.</summary>
    public const string FormName = "cell";

    private const string Text = "text";
    private const string Lane = "lane";
    private const string Week = "week";
    private const string Mode = "mode";
    private const string What = "what";
    private const string Change = "change ";

    /// <summary>What was typed; null when nothing was.</summary>
    public static KeptForm? Of(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        GridMode mode = (state.Mode == GridMode.Help ? state.HelpFor : state.Mode) is var typing && typing == GridMode.Confirm ? GridMode.Sign : typing;
        if (state.IsScratch || state.Entry is not { } entry || !IsTouched(state, mode, entry))
        {
            return null;
        }

        return new KeptForm(state.Plan.Code, FormName)
        {
            Fields = Texts((Text, entry.Line.Text)),
            Further = Texts(
            [
                (Lane, state.Lane.Id),
                (Week, state.Week.ToString(CultureInfo.InvariantCulture)),
                (Mode, mode.ToString()),
                .. entry.Proposed is { } edit ? Proposed(state, edit) : [],
                .. ReviewDraft.Further(state, mode),
            ]),
        };
    }

    /// <summary>The grid with the line as it was left. Where its cell is no more, or cannot be changed any more, the text is told.</summary>
    /// <param name="grid">The grid as it is now.</param>
    /// <param name="kept">What was kept of the line.</param>
    public static GridState Restored(GridState grid, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(grid);
        ArgumentNullException.ThrowIfNull(kept);
        string text = kept.Fields.GetValueOrDefault(Text, "");
        CellAddress cell = Cell(kept);
        int lane = grid.Plan.Lanes.ToList().FindIndex(one => one.Id == cell.Lane);
        if (ReviewDraft.ModeOf(kept.Further.GetValueOrDefault(Mode)) is { } saying)
        {
            return ReviewDraft.Restored(lane < 0 || cell.Week > grid.Plan.Weeks ? grid : GridMoves.To(grid, lane, cell.Week), saying, kept, text);
        }

        if (lane < 0 || PlanEdit.WhyNot(grid.Plan, cell) is not null)
        {
            return grid with { Status = SafeText.OneLine($"The cell cannot be typed into any more ({cell}); this was typed: {text}") };
        }

        GridState there = GridMoves.To(grid with { Mode = GridMode.Grid }, lane, cell.Week);
        return kept.Further.GetValueOrDefault(Mode) switch
        {
            nameof(GridMode.Fill) => With(GridTyping.BeginFill(there), text),
            nameof(GridMode.Reason) => Asked(there, kept, text),
            _ => With(GridTyping.Begin(there), text),
        };
    }

    /// <summary>What was typed, with its place and what stands there.</summary>
    /// <param name="plan">The plan as it is now.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="kept">What was kept of the line.</param>
    public static IEnumerable<(string Place, string Before, string Draft)> Lines(PlanRevision plan, ClinicalLibrary library, KeptForm kept)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(kept);
        CellAddress cell = Cell(kept);
        Lane? lane = plan.LaneOf(cell.Lane);
        string place = $"{lane?.Title ?? cell.Lane}, week {cell.Week}";
        string before = lane is null ? "" : CellNotation.Text(lane, plan.At(cell)?.Content, library);
        string text = kept.Fields.GetValueOrDefault(Text, "");
        return kept.Further.GetValueOrDefault(Mode) switch
        {
            nameof(GridMode.Fill) => [($"{place}, filled on for how many weeks", "", text)],
            { } said when ReviewDraft.ModeOf(said) is { } saying => [(ReviewDraft.Place(saying, place), "", text)],
            nameof(GridMode.Reason) => [(kept.Further.GetValueOrDefault(What, place), "", text.Length == 0 ? "waits for a reason" : $"reason: {text}")],
            _ => [(place, before, text)],
        };
    }

    // What only stands in the line because the cell holds it is not typed.
    private static bool IsTouched(GridState state, GridMode mode, CellEntry entry) => mode switch
    {
        GridMode.Edit => entry.Line.Text != CellNotation.Text(state.Lane, state.Plan.At(state.Cursor)?.Content, state.Desk.Library),
        GridMode.Fill => entry.Line.Text.Length > 0,
        _ when ReviewDraft.ModeOf(mode.ToString()) is not null => entry.Line.Text.Length > 0,
        _ => entry.Proposed is not null,
    };

    private static IEnumerable<(string, string)> Proposed(GridState state, ProposedEdit edit) =>
    [
        (What, edit.What),
        .. from change in edit.Changes
           let lane = state.Plan.LaneOf(change.Address.Lane)
           where lane is not null
           select ($"{Change}{change.Address.Lane} {change.Address.Week.ToString(CultureInfo.InvariantCulture)}", CellNotation.Text(lane, change.Content, state.Desk.Library)),
    ];

    /// <summary>The edit asked for once more. Where it needs no reason any more nothing is done unasked: its first cell is typed again.</summary>
    private static GridState Asked(GridState grid, KeptForm kept, string reason)
    {
        (CellAddress Cell, string Text)[] texts = [.. kept.Further.Where(one => one.Key.StartsWith(Change, StringComparison.Ordinal)).Select(one => (Address(one.Key[Change.Length..]), one.Value))];
        ImmutableArray<CellChange> changes =
        [
            .. from one in texts
               let lane = grid.Plan.LaneOf(one.Cell.Lane)
               where lane is not null && PlanEdit.WhyNot(grid.Plan, one.Cell) is null
               let read = CellNotation.Read(lane, one.Text, grid.Desk.Library).Value
               where read is not null
               select new CellChange(one.Cell, read.Content),
        ];
        GridState asked = changes.IsEmpty ? grid : GridEdits.Propose(grid, changes, kept.Further.GetValueOrDefault(What, "cells changed")).State;
        return asked.Mode == GridMode.Reason ? With(asked, reason) : With(GridTyping.Begin(grid), texts.Length > 0 ? texts[0].Text : "");
    }

    private static GridState With(GridState typing, string text) => typing with { Entry = typing.Entry! with { Line = LineEntry.Of(text) }, Status = "As it was left." };

    private static CellAddress Cell(KeptForm kept) => Address($"{kept.Further.GetValueOrDefault(Lane, "")} {kept.Further.GetValueOrDefault(Week, "")}");

    private static CellAddress Address(string words)
    {
        int space = words.LastIndexOf(' ');
        return new(words[..Math.Max(0, space)], int.TryParse(words[(space + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out int week) ? week : 0);
    }

    private static ImmutableSortedDictionary<string, string> Texts(params IEnumerable<(string Name, string Text)> texts) =>
        texts.ToImmutableSortedDictionary(text => text.Name, text => text.Text, StringComparer.Ordinal);
}
