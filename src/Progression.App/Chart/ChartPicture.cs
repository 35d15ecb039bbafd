using Progression.App.Pictures;
using Progression.Core.Plots;

namespace Progression.App.Chart;

/// <summary>Lays out the chart: the plot with its legend, and what it says in words under it or beside it.</summary>
public static class ChartPicture
{
    private const int Beside = 120;
    private const int PaneUnder = 5;

    /// <summary>The picture of a state.</summary>
    public static Picture Draw(ChartState state, PictureSize size)
    {
        ArgumentNullException.ThrowIfNull(state);
        PictureSize room = ScreenSheet.Room(size);
        Picture body = state.Mode == ChartMode.Help ? ScrolledText.Of([.. HelpLines(state).Select(line => PictureRow.Of(line, line.StartsWith(' ') ? Ink.Plain : Ink.Strong))], state.Scroll, room)
            : state.Subject is not { } subject ? new Picture([PictureRow.Empty, PictureRow.Of("Nothing has been measured yet, so there is nothing to chart.")])
            : state.Mode == ChartMode.Plot ? Plot(state, subject, room)
            : ScrolledText.Of(PageLines(state, room.Width), state.Scroll, room);
        return ScreenSheet.Of(ChartScreen.Where(state), body, (state.Status, ChartActions.Table.HintLine(state, size.Width)), size);
    }

    /// <summary>The lines of the help page.</summary>
    internal static IReadOnlyList<string> HelpLines(ChartState state) =>
    [
        .. ChartActions.Table.HelpPage(state.HelpFor.ToString()),
        "What is seen",
        "  ● │                     a measured value; the true one lies within for 9 in 10",
        "  ─ ▒ ░                   expected: the middle, 8 in 10 and 9 in 10 true values",
        "  ·                       weeks for which there are no published data",
        "  ◇ ╌                     a goal with its week; the line of the next one",
        "A forecast is a range and a chance, never a promise.",
    ];

    /// <summary>The lines of the numbers and of why, and of what stands beside the plot.</summary>
    internal static IReadOnlyList<PictureRow> PageLines(ChartState state, int width) => state.Subject is not { } subject ? [] : state.Mode switch
    {
        ChartMode.Numbers => [PictureRow.Of(ChartText.Heading(subject.Measure), Ink.Strong), .. ChartText.Numbers(state, subject, width)],
        ChartMode.Why => ChartText.Why(state, subject, width),
        _ => ChartText.Pane(state, subject, width),
    };

    /// <summary>The terminal's cursor rests on the words, so that a screen reader says what the plot shows.</summary>
    private static Picture Plot(ChartState state, ChartSubject subject, PictureSize room)
    {
        PictureRow heading = PictureRow.Of(ChartText.Heading(subject.Measure), Ink.Strong).Fit(room.Width);
        PictureRow legend = PictureRow.Of(ChartText.LegendOf(state, subject), Ink.Quiet).Fit(room.Width);
        if (room.Width < Beside)
        {
            PictureSize under = new(room.Width, room.Height >= 30 ? room.Height / 3 : PaneUnder);
            PictureSize plot = new(room.Width, room.Height - under.Height - 3);
            IEnumerable<PictureRow> words = ScrolledText.Of(PageLines(state, under.Width), state.Scroll, under).Rows;
            return new([heading, .. ChartPlot.Rows(state, subject, plot), legend, TextLines.Rule(room.Width), .. words], new CaretAt(0, plot.Height + 3));
        }

        int beside = Math.Clamp(room.Width * 3 / 10, 38, 64);
        PictureSize left = new(room.Width - beside - 2, room.Height - 2);
        PictureSize right = new(beside, room.Height - 2);
        Picture pane = ScrolledText.Of(PageLines(state, beside), state.Scroll, right).Fit(right);
        PictureRow line = PictureRow.Of("│ ", Ink.Quiet);
        return new([heading, .. ChartPlot.Rows(state, subject, left).Zip(pane.Rows, (one, other) => one.Then(line).Then(other)), legend], new CaretAt(left.Width + 2, 1));
    }
}
