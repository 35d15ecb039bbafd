using System.Globalization;
using Progression.App.Actions;
using Progression.Core.Entry;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>Typing a cell's content or a reason, in one line.</summary>
public static class GridTyping
{
    /// <summary>Opens the editor on the cell under the cursor with its present content.</summary>
    public static GridState Begin(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        string present = CellNotation.Text(state.Lane, state.Plan.At(state.Cursor)?.Content, state.Desk.Library);
        return state with { Mode = GridMode.Edit, Entry = new CellEntry(LineEntry.Of(present)), Status = "" };
    }

    /// <summary>Asks for how many weeks the cell under the cursor is filled on.</summary>
    public static GridState BeginFill(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = GridMode.Fill, Entry = new CellEntry(LineEntry.Empty), Status = "" };
    }

    /// <summary>The state with the line changed; a problem told before stands until the line is handed in again.</summary>
    public static GridState With(GridState state, Func<LineEntry, LineEntry> change)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(change);
        return state with { Entry = state.Entry! with { Line = change(state.Entry.Line) } };
    }

    /// <summary>Typed or pasted text; null in a mode that takes none.</summary>
    public static GridState? Type(GridState state, string text)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state.Entry is null || state.Mode is GridMode.Help or GridMode.Confirm ? null : With(state, line => line.Put(text));
    }

    /// <summary>Hands the line in: takes it, or says what is wrong and leaves the caret in it.</summary>
    public static Step<GridState> HandIn(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        string text = state.Entry!.Line.Text;
        if (state.Mode == GridMode.Fill)
        {
            return Fill(state, text.Trim());
        }

        if (state.Entry.Proposed is { } edit)
        {
            return text.Trim().Length > 0
                ? GridEdits.WithReason(state, edit, text.Trim())
                : Step.To(Refused(state, new Problem("Reason", "A reason is needed to go against a safety rule.", "a few words", "")));
        }
        Entered<CellEdit> read = CellNotation.Read(state.Lane, text, state.Desk.Library);
        return read.Value is { } good ? GridEdits.Propose(state, good.Content) : Step.To(Refused(state, read.Problems[0]));
    }

    /// <summary>Leaves the line without changing the cell.</summary>
    public static GridState Cancel(GridState state)
    {
        ArgumentNullException.ThrowIfNull(state);
        return state with { Mode = GridMode.Grid, Entry = null, Status = "Left as it was." };
    }

    private static Step<GridState> Fill(GridState state, string text)
    {
        int most = state.Plan.Weeks - state.Week;
        int weeks = text.Length == 0 ? most : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int typed) ? typed : 0;
        return weeks >= 1 && weeks <= most
            ? GridCopies.Fill(state, weeks)
            : Step.To(Refused(state, new Problem("Weeks", "The plan has no such weeks on.", $"1 to {most} weeks; nothing for all of them", Found.Of(text))));
    }

    private static GridState Refused(GridState state, Problem problem) =>
        state with { Entry = state.Entry! with { Problem = problem }, Status = problem.Wrong };
}
