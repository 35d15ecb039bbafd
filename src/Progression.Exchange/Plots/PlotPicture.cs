using Progression.Core.Entry;
using Progression.Core.Plots;
using Progression.Core.Quantities;
using ScottPlot;
using ScottPlot.TickGenerators;

namespace Progression.Exchange.Plots;

/// <summary>A plot as a picture: for print and for every program as PNG, to be enlarged and read aloud as SVG.</summary>
public static class PlotPicture
{
    private const float TitleSize = 16;

    /// <summary>The plot as a PNG.</summary>
    public static byte[] Png(PlotContent content, PlotSize? size = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        size ??= PlotSize.Usual;
        using Plot plot = Drawn(Safe(content), size);
        plot.ScaleFactor = size.PixelsPerUnit;
        return plot.GetImage(size.Width * size.PixelsPerUnit, size.Height * size.PixelsPerUnit).GetImageBytes();
    }

    /// <summary>The plot as an SVG. Its letters stay letters, and it carries its title and its words.</summary>
    public static string Svg(PlotContent content, PlotSize? size = null)
    {
        ArgumentNullException.ThrowIfNull(content);
        size ??= PlotSize.Usual;
        PlotContent safe = Safe(content);
        using Plot plot = Drawn(safe, size);
        return SvgWords.Added(plot.GetSvgXml(size.Width, size.Height), safe);
    }

    private static Plot Drawn(PlotContent content, PlotSize size)
    {
        PlotFont.Use();
        Plot plot = new();
        plot.Font.Set(PlotFont.Name);
        plot.Title(content.Title, TitleSize);
        plot.HideLegend();
        plot.Grid.MajorLineColor = Colors.Black.WithAlpha(0.12);
        Axis(plot.Axes.Bottom, content.Across);
        Axis(plot.Axes.Left, content.Up);
        foreach (PlotPart part in content.Parts)
        {
            plot.Add.Plottable(new DrawnPart(part));
        }

        plot.Axes.SetLimits(content.Across.From, content.Across.To, content.Up.From, content.Up.To);
        plot.Axes.AddPanel(new PlotKey(content, size.Width));
        return plot;
    }

    private static void Axis(IAxis axis, PlotAxis of)
    {
        axis.Label.Text = of.Label;
        axis.Label.Bold = false;
        axis.Label.FontSize = 13;
        axis.TickGenerator = new NumericManual([.. of.Ticks], [.. of.Ticks.Select(value => Number.Text(value))]);
    }

    // Words come from files as well: no letter that a picture or a reader of it could take for something else.
    private static PlotContent Safe(PlotContent content) => content with
    {
        Title = SafeText.OneLine(content.Title),
        Words = SafeText.OneLine(content.Words),
        Note = content.Note is null ? null : SafeText.OneLine(content.Note),
        Across = content.Across with { Label = SafeText.OneLine(content.Across.Label) },
        Up = content.Up with { Label = SafeText.OneLine(content.Up.Label) },
    };
}
