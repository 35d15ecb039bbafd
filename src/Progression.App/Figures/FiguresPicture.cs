using Progression.App.Pictures;
using Progression.Core.Entry;

namespace Progression.App.Figures;

/// <summary>Draws the clinic's figures: what can be drawn as a curve, then the figures.</summary>
public static class FiguresPicture
{
    /// <summary>The picture of a state.</summary>
    public static Picture Draw(FiguresState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        return ScreenSheet.Of(FiguresScreen.Place, ScrolledText.Of(PageLines(state, room.Width), state.Scroll, room), (state.Status, FiguresActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the page, or of the help.</summary>
    internal static IReadOnlyList<PictureRow> PageLines(FiguresState state, int width) => state.Mode == FiguresMode.Help
        ? [.. HelpLines(state).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))]
        : [.. new FiguresText(state.Summary, width).Lines().Select(line => PictureRow.Of(SafeText.OneLine(line)))];

    private static IEnumerable<string> HelpLines(FiguresState state) =>
    [
        .. FiguresActions.Table.HelpPage(state.Mode.ToString()),
        "The same from a shell",
        "  progression summary --by regimen --csv > figures.csv",
        "  progression summary --goal flexion-week-6 --plot flexion.svg",
    ];
}
