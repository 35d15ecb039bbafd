using System.CommandLine;
using Progression.App.Papers;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression card</c>: settings, pads, dose and cautions of a week of stim on one small page.</summary>
internal static class CardCommand
{
    internal static Command Build(PaperWorld world) => new PaperCommand("card", DocumentPapers.VisitCard, world).Build(
        "Prints a week of stim on a small card for whoever sets the stimulator.",
        """
        Examples:
          progression card EXAMPLE-07
          progression card EXAMPLE-07 --week 3 --out card.pdf
        """);
}
