using Progression.App.Pictures;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>
/// One short line on the cell under the cursor: its worst finding, else its content in full. It is the price of every step of the cursor over a slow line,
/// so it is short; the whole answer is asked for by a key.
/// </summary>
internal static class CellEssence
{
    /// <summary>Columns of the line at most, in a window of any width.</summary>
    public const int Most = 56;

    public static TextSpan Of(GridState state)
    {
        if (state.Review?.On(state.Cursor).Select(said => ((Core.Reviews.ReviewAct, Core.Reviews.ReviewComment)?)said).LastOrDefault() is { } said)
        {
            return Short($"\" {ReviewText.Line(said)}", Ink.Note);
        }

        if (state.FindingsOn(state.Cursor).FirstOrDefault() is { } worst)
        {
            return Short(FindingWords.Line(worst), FindingWords.InkOf(worst.Severity));
        }

        PlanCell? cell = state.Plan.At(state.Cursor);
        string pin = cell?.Pin is not { } pinned ? "" : pinned.Reason is { } reason ? $"* pinned: {reason}" : "* pinned";
        string content = cell?.Content is { } there ? CellNotation.Text(state.Lane, there, state.Desk.Library) : "";
        return Short(string.Join("  ", new[] { content, pin }.Where(part => part.Length > 0)), Ink.Plain);
    }

    private static TextSpan Short(string text, Ink ink) => new(TextFit.Longest([text], Most).TrimEnd(), ink);
}
