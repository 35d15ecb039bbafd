using Progression.Core.Plots;
using ScottPlot;

namespace Progression.Exchange.Plots;

/// <summary>How each part looks, in black, white and greys that survive a copier. The key draws its samples with the same ink.</summary>
/// <remarks>Slanted lines are drawn one by one, because a filling with a pattern is lost in an SVG.</remarks>
internal sealed class PlotInk(RenderPack rp)
{
    private const float Slant = 6;

    private static readonly Color Light = Color.FromHex("#E4E4E4");
    private static readonly Color Dark = Color.FromHex("#BFBFBF");
    private static readonly LineStyle Thin = new(1, Colors.Black);

    internal void Range(IReadOnlyList<Pixel> outline, bool isDark) =>
        Drawing.FillPath(rp.Canvas, rp.Paint, outline, new FillStyle(isDark ? Dark : Light));

    internal void Line(IReadOnlyList<Pixel> points, PlotStroke stroke) => Drawing.DrawLines(rp.Canvas, rp.Paint, points, new LineStyle(2, Colors.Black, stroke switch
    {
        PlotStroke.Dashed => LinePattern.Dashed,
        PlotStroke.Dotted => LinePattern.Dotted,
        _ => LinePattern.Solid,
    }));

    internal void Mark(Pixel at, PlotForm form)
    {
        if (form == PlotForm.Tick)
        {
            Drawing.DrawLine(rp.Canvas, rp.Paint, at.WithOffset(0, -5), at.WithOffset(0, 5), Thin);
            return;
        }

        bool isDisc = form == PlotForm.Disc;
        MarkerStyle style = new(isDisc ? MarkerShape.FilledCircle : MarkerShape.FilledDiamond, isDisc ? 9 : 12, isDisc ? Colors.Black : Colors.White)
        {
            OutlineColor = Colors.Black,
            OutlineWidth = isDisc ? 0 : 1.5f,
        };
        Drawing.DrawMarker(rp.Canvas, rp.Paint, at, style);
    }

    /// <summary>An error bar with a cap at each end.</summary>
    internal void Error(float x, float low, float high)
    {
        Drawing.DrawLine(rp.Canvas, rp.Paint, new Pixel(x, low), new Pixel(x, high), Thin);
        Drawing.DrawLine(rp.Canvas, rp.Paint, new Pixel(x - 4, low), new Pixel(x + 4, low), Thin);
        Drawing.DrawLine(rp.Canvas, rp.Paint, new Pixel(x - 4, high), new Pixel(x + 4, high), Thin);
    }

    internal void Column(PixelRect bar, PlotFilling filling)
    {
        Drawing.FillRectangle(rp.Canvas, bar, rp.Paint, new FillStyle(filling switch { PlotFilling.Grey => Dark, PlotFilling.Black => Colors.Black, _ => Colors.White }));
        if (filling == PlotFilling.Hatched)
        {
            Slanted(bar);
        }

        Drawing.DrawRectangle(rp.Canvas, bar, rp.Paint, Thin);
    }

    internal void Text(string text, Pixel at, (Alignment Alignment, float Size) how, Color? behind = null)
    {
        LabelStyle label = new() { Text = text, FontName = PlotFont.Name, FontSize = how.Size, Alignment = how.Alignment, ForeColor = Colors.Black, BackgroundColor = behind ?? Colors.Transparent };
        label.Render(rp.Canvas, at, rp.Paint);
    }

    // Lines that rise to the right, cut off at the edges of the bar.
    private void Slanted(PixelRect bar)
    {
        for (float start = bar.Left - bar.Height + Slant; start < bar.Right; start += Slant)
        {
            (float left, float right) = (Math.Max(start, bar.Left), Math.Min(start + bar.Height, bar.Right));
            Drawing.DrawLine(rp.Canvas, rp.Paint, new Pixel(left, bar.Bottom - (left - start)), new Pixel(right, bar.Bottom - (right - start)), Thin);
        }
    }
}
