using System.CommandLine;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression import</c>: what a file of another program says, put into a saved case.</summary>
internal static class ImportCommand
{
    internal static Command Build(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries) =>
        new("import", "Puts what a file of another program says into a saved case.")
        {
            new ImportCsvCommand(output, environment, stores, libraries).Build(),
            new ImportFhirCommand(output, environment, stores, libraries).Build(),
        };
}
