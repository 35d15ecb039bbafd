using Progression.App.Forms;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Trying;

/// <summary>Draws the try-out: the grid as it would be, what differs, and the readings that are tried.</summary>
public static class TryPicture
{
    private const int Differences = 4;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(TryState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(size);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode == TryMode.Help ? FormScreen.Help(HelpLines(), state.Scroll, size.Width) : Parts(state, room);
        return ScreenSheet.Of(TryScreen.Where(state), body, (TextFit.Exactly(Status(state), size.Width), TryActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    public static IReadOnlyList<string> HelpLines() =>
        [.. TryActions.Table.HelpPage(nameof(TryMode.Readings)), "Type over a reading and the grid, the findings and what to expect move with it. An empty line is \"not measured\".", "It suggests; a clinician decides."];

    private static Picture Parts(TryState state, PictureSize room)
    {
        int form = Math.Clamp(room.Height / 4, 5, 14);
        int differs = Differences + Math.Clamp((room.Height - 24) / 3, 0, 6);
        PictureSize upper = new(room.Width, room.Height - form - differs - 2);
        Picture grid = GridSheet.Around(state.Grid, upper).Fit(upper);
        PictureRow line = PictureRow.Of(new string('─', room.Width), Ink.Quiet);
        PictureSize middle = new(room.Width, differs), lower = new(room.Width, form);
        Picture fields = FormPicture.Draw(state.Form, lower, field => Beside(state, field));
        CaretAt? caret = fields.Caret is { } at ? at with { Row = at.Row + upper.Height + differs + 2 } : null;
        Picture told = new Picture([.. TryWords.Lines(state, room.Width).Select(text => PictureRow.Of(text))]).Fit(middle);
        return new([.. grid.Rows, line, .. told.Rows, line, .. fields.Fit(lower).Rows], caret);
    }

    private static FormBeside Beside(TryState state, FormLine line) => new(
        line.IsTouched ? PictureRow.Of($"was {(line.Given.Length == 0 ? "not measured" : line.Given)}", Ink.Strong)
        : state.Wrong(line) is not null ? PictureRow.Of("not a value", Ink.Stop)
        : PictureRow.Empty);

    private static string Status(TryState state) => SafeText.OneLine(
        state.Form.Problem is { } problem ? problem.ToString()
        : state.Wrong(state.Form.Current) is { } wrong ? $"Not taken yet: {wrong.Allowed}."
        : state.Status);
}
