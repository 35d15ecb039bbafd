using System.CommandLine;
using Progression.App.Papers;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression plot</c>: the course of a measure with its forecast and milestones, or stim and active work by week, as a picture for print.</summary>
internal static class PlotCommand
{
    internal static Command Build(PaperWorld world) => new PaperCommand("plot", [PlotPapers.Course, PlotPapers.Dose], world)
    {
        TakesHeader = false,
        TakesMeasure = true,
    }.Build(
        "Draws the course of a measure with its forecast, or stim and active work by week.",
        """
        Examples:
          progression plot EXAMPLE-07 --measure knee-flexion --out flexion.svg
          progression plot EXAMPLE-07 --what dose --out dose.png
          progression plot EXAMPLE-07 --measure lag --format text

        Readable in black and white; no name stands in it, only the code. As text it is told in words, which an SVG carries as well.
        """);
}
