using System.CommandLine;
using Progression.App.Commands.Sheets;
using Progression.App.Papers;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression export csv</c>: readings, sessions or plan as a table.</summary>
internal static class ExportCsvCommand
{
    internal static Command Build(PaperWorld world) =>
        new PaperCommand("export csv", [ExchangePapers.Measures, ExchangePapers.Sessions, ExchangePapers.Plan], world) { TakesHeader = false, IsPrinted = false }.Build(
            "Writes readings, sessions or the plan of a case as a table (RFC 4180).",
            """
            The table has a header, one row for each reading, session or cell, and the code of the case; text that a spreadsheet would run as a formula
            gets an apostrophe before it, and "progression import csv" takes it off again. On a terminal lines end as it ends them; --out writes the exact file.

            Examples:
              progression export csv EXAMPLE-07 --out readings.csv
              progression export csv EXAMPLE-07 --what sessions
            """);
}
