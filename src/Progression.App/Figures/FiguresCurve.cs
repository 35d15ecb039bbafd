using Progression.App.Papers;
using Progression.Core.Outcomes;
using Progression.Core.Plots;
using Progression.Exchange.Plots;

namespace Progression.App.Figures;

/// <summary>The picture of how many had reached a goal by which week.</summary>
internal static class FiguresCurve
{
    /// <summary>The picture as a file.</summary>
    /// <param name="figures">What is drawn.</param>
    /// <param name="summary">Where it is from.</param>
    /// <param name="format">SVG or PNG.</param>
    internal static PaperMade Made(WaitFigures figures, ClinicSummary summary, PaperFormat format)
    {
        PlotContent plot = WaitPlot.Of(figures, (int)summary.Least.Value);
        return format == PaperFormat.Png ? PaperMade.Of(PlotPicture.Png(plot)) : PaperMade.Of(PlotPicture.Svg(plot));
    }
}
