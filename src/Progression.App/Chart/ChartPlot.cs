using Progression.App.Pictures;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plots;
using Progression.Core.Quantities;

namespace Progression.App.Chart;

/// <summary>
/// Draws a subject: the band of what is expected, its middle, the goals, and on top what was measured with its error. Each has a letter of its own, so
/// that it reads without colour and in seven bits. Where no published data reach, the band is only hinted at.
/// </summary>
internal static class ChartPlot
{
    private const int Below = 3;
    private const int MarkRow = 2;
    private const string Thirds = "▔─▁";
    private const int MostBetweenLabels = 8;
    private const int ColumnsPerLabel = 5;

    /// <summary>The plot with its axes, exactly the size given.</summary>
    public static IEnumerable<PictureRow> Rows(ChartState state, ChartSubject subject, PictureSize size)
    {
        ChartScale rough = ChartScale.Of(subject, state.LastWeek, size.Height - Below, size.Width);
        int gutter = rough.Ticks.Values.Select(value => Label(value).Length).DefaultIfEmpty(1).Max() + 1;
        ChartScale scale = rough with { Columns = size.Width - gutter - 1 };
        PlotCanvas canvas = new(scale.Rows, scale.Columns);
        if (subject.Forecast is { Points.IsEmpty: false } forecast)
        {
            Band(canvas, scale, forecast);
            NextGoal(canvas, scale, subject, state.Today);
            Middle(canvas, scale, forecast);
        }
        else
        {
            NextGoal(canvas, scale, subject, state.Today);
        }

        Bars(canvas, scale, subject);
        Goals(canvas, scale, subject, state.Today);
        foreach (ChartDot dot in subject.Dots)
        {
            canvas.Put(scale.Row(dot.Value), scale.Column(dot.Week), "●", Ink.Strong);
        }

        IEnumerable<PictureRow> plot = canvas.ToRows().Select((row, at) => Gutter(scale, gutter, at).Then(row));
        return [.. plot, .. WeekAxis(state, scale, gutter)];
    }

    private static void Band(PlotCanvas canvas, ChartScale scale, Forecast forecast)
    {
        for (int column = scale.Column(forecast.Points[0].Week); column < scale.Columns; column++)
        {
            ForecastPoint point = forecast.At(scale.Week(column));
            Fill(canvas, column, scale, (point.Low90, point.High90, point.BeyondPrior ? "" : "░"));
            Fill(canvas, column, scale, (point.Low80, point.High80, !point.BeyondPrior ? "▒" : column % 2 == 0 ? "·" : ""));
        }
    }

    private static void Fill(PlotCanvas canvas, int column, ChartScale scale, (double Low, double High, string Letter) band)
    {
        for (int row = Math.Max(0, scale.Row(band.High)); row <= Math.Min(scale.Rows - 1, scale.Row(band.Low)); row++)
        {
            canvas.Put(row, column, band.Letter, Ink.Quiet);
        }
    }

    private static void Middle(PlotCanvas canvas, ChartScale scale, Forecast forecast)
    {
        for (int column = scale.Column(forecast.Points[0].Week); column < scale.Columns; column++)
        {
            ForecastPoint point = forecast.At(scale.Week(column));
            if (!point.BeyondPrior || column % 2 == 0)
            {
                canvas.Put(scale.Row(point.Median), column, Thirds[scale.Third(point.Median)].ToString(), point.BeyondPrior ? Ink.Quiet : Ink.Check);
            }
        }
    }

    private static void NextGoal(PlotCanvas canvas, ChartScale scale, ChartSubject subject, double today)
    {
        if (subject.Goals.FirstOrDefault(goal => goal.Week >= today && goal.Week <= scale.LastWeek) is { Target: double target })
        {
            canvas.Put(scale.Row(target), 0, new string('╌', scale.Columns), Ink.Milestone);
        }
    }

    private static void Bars(PlotCanvas canvas, ChartScale scale, ChartSubject subject)
    {
        foreach (ChartDot dot in subject.Dots.Where(dot => dot.Low is not null))
        {
            (int top, int bottom) = (scale.Row(dot.High!.Value), scale.Row(dot.Low!.Value));
            for (int row = top; row <= bottom; row++)
            {
                canvas.Put(row, scale.Column(dot.Week), row == top ? "┬" : row == bottom ? "┴" : "│", Ink.Strong);
            }
        }
    }

    /// <summary>The goals; the next one comes first, and each has its words only where they cover no reading and no other goal.</summary>
    private static void Goals(PlotCanvas canvas, ChartScale scale, ChartSubject subject, double today)
    {
        List<Milestone> goals = [.. subject.Goals.Where(goal => goal.Week <= scale.LastWeek).OrderBy(goal => goal.Week < today).ThenBy(goal => goal.Week)];
        HashSet<(int Row, int Column)> covered = [.. subject.Dots.SelectMany(dot => Cells(scale, dot)), .. goals.Select(goal => Cell(scale, goal))];
        foreach (Milestone goal in goals)
        {
            (int row, int column) = Cell(scale, goal);
            string words = $" {Number.Text(goal.Target!.Value, 1)} by wk {Number.Text(goal.Week, 1)} ";
            IEnumerable<int> starts = new[] { column + 1, column - words.Length }.Where(start => start >= 0 && start + words.Length <= scale.Columns
                && !Enumerable.Range(start, words.Length).Any(at => covered.Contains((row, at))));
            foreach (int start in starts.Take(1))
            {
                canvas.Put(row, start, words, Ink.Milestone);
                covered.UnionWith(Enumerable.Range(start, words.Length).Select(at => (row, at)));
            }

            canvas.Put(row, column, "◇", Ink.Milestone);
        }
    }

    private static (int Row, int Column) Cell(ChartScale scale, Milestone goal) => (scale.Row(goal.Target!.Value), scale.Column(goal.Week));

    private static IEnumerable<(int Row, int Column)> Cells(ChartScale scale, ChartDot dot)
    {
        int top = scale.Row(dot.High ?? dot.Value);
        return Enumerable.Range(top, scale.Row(dot.Low ?? dot.Value) - top + 1).Select(row => (row, scale.Column(dot.Week)));
    }

    private static PictureRow Gutter(ChartScale scale, int width, int row) => scale.Ticks.TryGetValue(row, out double value)
        ? new([new(Label(value).PadLeft(width)), new("┼", Ink.Quiet)])
        : new([new(new string(' ', width)), new("│", Ink.Quiet)]);

    /// <summary>The line under the plot, the weeks, and the marks of the cursor and of today.</summary>
    private static IEnumerable<PictureRow> WeekAxis(ChartState state, ChartScale scale, int gutter)
    {
        int step = 1;
        while (step < MostBetweenLabels && scale.Column(step) < ColumnsPerLabel)
        {
            step *= 2;
        }

        PlotCanvas axis = new(Below, scale.Columns);
        axis.Put(0, 0, new string('─', scale.Columns), Ink.Quiet);
        for (int week = 0; week <= scale.LastWeek; week += step)
        {
            string label = Number.Text(week, 0);
            axis.Put(0, scale.Column(week), "┼", Ink.Quiet);
            axis.Put(1, Math.Min(scale.Column(week), scale.Columns - label.Length), label, Ink.Plain);
        }

        Marks(axis, scale.Column(state.Today), scale.Column(state.Week), $"week {state.Week}");
        return axis.ToRows().Select((row, at) => PictureRow.Of((at == 1 ? "wk" : "").PadLeft(gutter)[^gutter..] + (at == 0 ? "└" : " "), Ink.Quiet).Then(row));
    }

    // Each mark has its words on the side away from the other; where they do not fit, the mark stands alone.
    private static void Marks(PlotCanvas axis, int today, int cursor, string week)
    {
        if (today == cursor)
        {
            Mark(axis, cursor, ($"↑ {week}, today", $"{week}, today ↑"), Ink.Chosen);
            return;
        }

        (string, string) now = today > cursor ? ("▲ today", "▲") : ("▲", "today ▲");
        (string, string) chosen = cursor > today ? ($"↑ {week}", "↑") : ("↑", $"{week} ↑");
        Mark(axis, today, now, Ink.Today);
        Mark(axis, cursor, chosen, Ink.Chosen);
    }

    private static void Mark(PlotCanvas axis, int column, (string Right, string Left) text, Ink ink)
    {
        bool fitsRight = column + text.Right.Length <= axis.Columns;
        bool fitsLeft = column - text.Left.Length + 1 >= 0;
        if (fitsRight && (text.Right.Length > 1 || !fitsLeft))
        {
            axis.Put(MarkRow, column, text.Right, ink);
        }
        else
        {
            axis.Put(MarkRow, column - text.Left.Length + 1, fitsLeft ? text.Left : text.Left[^1..].PadLeft(text.Left.Length), ink);
        }
    }

    private static string Label(double value) => Number.Text(value, 2);
}
