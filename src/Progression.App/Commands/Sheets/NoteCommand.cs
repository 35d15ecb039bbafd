using System.CommandLine;
using Progression.App.Papers;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression note</c>: the progress note and plan of care for the record.</summary>
internal static class NoteCommand
{
    internal static Command Build(PaperWorld world) => new PaperCommand("note", DocumentPapers.ProgressNote, world).Build(
        "Prints the progress note and plan of care for the record.",
        """
        Examples:
          progression note EXAMPLE-07
          progression note EXAMPLE-07 --letter --out note.pdf
        """);
}
