using System.CommandLine;
using Progression.App.Papers;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression sheet</c>: a week of a plan in plain words for the patient. What is not signed says so in large letters.</summary>
internal static class SheetCommand
{
    internal static Command Build(PaperWorld world) => new PaperCommand("sheet", DocumentPapers.HomeSheet, world) { TakesWords = true }.Build(
        "Prints a week of a plan in plain words for the patient.",
        """
        Examples:
          progression sheet EXAMPLE-07
          progression sheet EXAMPLE-07 --week 3 --contact "the clinic, ext. 12" --out week-3.pdf
        """);
}
