using System.CommandLine;
using Progression.App.Commands.Sheets;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression export</c>: a case in a format of other programs.</summary>
internal static class ExportCommand
{
    internal static Command Build(PaperWorld world, CliEnvironment environment) => new("export", "Writes a case in a format of other programs.")
    {
        ExportCsvCommand.Build(world), ExportCalendarCommand.Build(world, environment), ExportFhirCommand.Build(world, environment),
    };
}
