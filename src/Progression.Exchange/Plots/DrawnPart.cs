using Progression.Core.Plots;
using ScottPlot;

namespace Progression.Exchange.Plots;

/// <summary>A part of a plot between its axes.</summary>
internal sealed class DrawnPart(PlotPart part) : IPlottable
{
    private const float LabelSize = 11;

    /// <inheritdoc/>
    public bool IsVisible { get; set; } = true;

    /// <inheritdoc/>
    public IAxes Axes { get; set; } = new Axes();

    /// <inheritdoc/>
    public IEnumerable<LegendItem> LegendItems => [];

    /// <inheritdoc/>
    public AxisLimits GetAxisLimits() => AxisLimits.NoLimits;

    /// <inheritdoc/>
    public void Render(RenderPack rp)
    {
        PlotInk ink = new(rp);
        switch (part)
        {
            case PlotPart.Range range:
                ink.Range([.. range.Points.Select(point => At(point.X, point.High)), .. range.Points.Reverse().Select(point => At(point.X, point.Low))], range.IsDark);
                break;
            case PlotPart.Line line:
                ink.Line([.. line.Points.Select(point => At(point.X, point.Y))], line.Stroke);
                break;
            case PlotPart.Marks marks:
                Marks(ink, marks);
                break;
            case PlotPart.Columns columns:
                foreach (PlotPoint bar in columns.Bars)
                {
                    ink.Column(new PixelRect(At(bar.X - (columns.Width / 2), bar.Y), At(bar.X + (columns.Width / 2), 0)), columns.Filling);
                }

                break;
        }
    }

    private void Marks(PlotInk ink, PlotPart.Marks marks)
    {
        foreach (PlotMark mark in marks.Points)
        {
            Pixel at = At(mark.X, mark.Y);
            if (mark is { Low: double low, High: double high })
            {
                ink.Error(at.X, Axes.GetPixelY(low), Axes.GetPixelY(high));
            }

            ink.Mark(at, marks.Mark);
            if (mark.Label is { } label)
            {
                // Inwards, where it would not fit between the mark and the edge.
                bool isLeft = at.X > Axes.DataRect.Right - (label.Length * LabelSize * 0.65f);
                Alignment alignment = (isLeft, mark.IsLabelAbove) switch
                {
                    (true, true) => Alignment.LowerRight,
                    (true, false) => Alignment.UpperRight,
                    (false, true) => Alignment.LowerLeft,
                    _ => Alignment.UpperLeft,
                };
                ink.Text(label, at.WithOffset(isLeft ? -6 : 6, mark.IsLabelAbove ? -6 : 6), (alignment, LabelSize), Colors.White.WithAlpha(0.6));
            }
        }
    }

    private Pixel At(double x, double y) => new(Axes.GetPixelX(x), Axes.GetPixelY(y));
}
