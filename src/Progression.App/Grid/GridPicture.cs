using Progression.App.Actions;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Grid;

/// <summary>Lays out the whole screen: a line that says whose plan this is, the grid with its answer, a status line and the keys.</summary>
public static class GridPicture
{
    private const int AnswerBeside = 120;
    private const int AnswerUnder = 7;

    /// <summary>The picture of a state.</summary>
    /// <param name="state">The state.</param>
    /// <param name="size">The room; at least <see cref="PictureSize.Smallest"/>.</param>
    /// <param name="actions">The table the hint line and the help page are made from.</param>
    public static Picture Draw(GridState state, PictureSize size, ActionTable<GridState> actions)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        ArgumentNullException.ThrowIfNull(actions);
        PictureSize room = new(size.Width, size.Height - 3);
        Picture body = (state.Mode switch
        {
            GridMode.Help => GridPages.Help(state, room, actions),
            GridMode.Why => GridPages.Why(state, room),
            GridMode.Days => GridDays.Draw(state, room),
            GridMode.Findings => GridPages.Findings(state, room),
            GridMode.Draft => DraftPages.Question(state, room),
            GridMode.Compare => DraftPages.Comparison(state, room),
            GridMode.Review => ReviewPages.Overview(state, room),
            GridMode.Sign or GridMode.Confirm => ReviewPages.Signature(state, room),
            GridMode.Conflict => ConflictPages.Draw(state, room),
            _ => GridAndAnswer(state, room),
        }).Fit(room);
        CaretAt? caret = body.Caret is { } at ? at with { Row = at.Row + 1 } : null;
        return new([GridScreen.Where(state).Title(size.Width), .. body.Rows, Status(state, size.Width), Hints(state, size.Width, actions)], caret);
    }

    private static Picture GridAndAnswer(GridState state, PictureSize room)
    {
        bool typing = state.Entry is not null;
        if (!state.ShowsAnswer && !typing)
        {
            return GridSheet.Around(state, room);
        }
        return room.Width >= AnswerBeside ? Beside(state, room) : Under(state, room);
    }

    private static Picture Under(GridState state, PictureSize room)
    {
        PictureSize lower = new(room.Width, room.Height >= 30 ? room.Height / 3 : AnswerUnder);
        PictureSize upper = new(room.Width, room.Height - lower.Height);
        Picture grid = GridSheet.Around(state, upper).Fit(upper);
        Picture pane = Pane(state, new(lower.Width, lower.Height - 1));
        PictureRow line = PictureRow.Of(new string('─', room.Width), Ink.Quiet);
        CaretAt? caret = pane.Caret is { } at ? at with { Row = at.Row + upper.Height + 1 } : grid.Caret;
        return new([.. grid.Rows, line, .. pane.Rows], caret);
    }

    private static Picture Beside(GridState state, PictureSize room)
    {
        int answer = Math.Clamp(room.Width * 3 / 10, 38, 64);
        PictureSize left = new(room.Width - answer - 2, room.Height);
        Picture grid = GridSheet.Around(state, left).Fit(left);
        Picture pane = Pane(state, new(answer, room.Height));
        PictureRow line = PictureRow.Of("│ ", Ink.Quiet);
        CaretAt? caret = pane.Caret is { } at ? at with { Column = at.Column + left.Width + 2 } : grid.Caret;
        return new([.. grid.Rows.Zip(pane.Fit(new(answer, room.Height)).Rows, (one, other) => one.Then(line).Then(other))], caret);
    }

    private static Picture Pane(GridState state, PictureSize room) =>
        state.Entry is { } entry ? GridPages.Entry(state, entry, room) : ScrolledText.Of(AnswerText.Lines(state, room.Width), state.Scroll, room);

    // What was just told is shown whole; the counts stand beside it where there is room.
    private static PictureRow Status(GridState state, int width)
    {
        string counts = FindingWords.Counts(state.Findings);
        TextSpan told = state is { Status: "", Mode: GridMode.Grid } ? CellEssence.Of(state) : new(state.Status);
        return SafeText.Width(told.Text) + 1 + counts.Length > width && state.Status.Length > 0
            ? PictureRow.Of(TextFit.Exactly(told.Text, width))
            : Sides(told, new(counts, state.Findings.IsEmpty ? Ink.Quiet : FindingWords.InkOf(state.Findings[0].Severity)), width);
    }

    private static PictureRow Hints(GridState state, int width, ActionTable<GridState> actions) =>
        PictureRow.Of(actions.HintLine(state, width), Ink.Quiet);

    private static PictureRow Sides(TextSpan left, TextSpan right, int width) =>
        PictureRow.Of(TextFit.Exactly(left.Text, Math.Max(0, width - right.Text.Length - 1)), left.Ink).Then(new([new(" "), right]));
}
