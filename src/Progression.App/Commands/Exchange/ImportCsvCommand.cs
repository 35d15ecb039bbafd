using System.Collections.Immutable;
using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Exchange.Csv;

namespace Progression.App.Commands.Exchange;

/// <summary><c>progression import csv</c>: readings, sessions or plan cells of a table.</summary>
internal sealed class ImportCsvCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private const string Name = "import csv";

    private readonly ImportDesk _desk = new(output, environment, stores);
    private readonly Option<string?> _what = new("--what") { Description = "What the table holds: measures, sessions or plan. Default: measures.", HelpName = "measures|sessions|plan" };
    private readonly Option<string[]> _map = new("--map") { Description = "What a column is: \"Knee flexion=flexion_active deg\"; NAME=ignore leaves it out. May be given again; remembered for files with the same header.", HelpName = "HEAD=NAME" };
    private readonly Option<string?> _dates = new("--dates") { Description = "The order of day and month where no day of the file tells it.", HelpName = "day-first|month-first" };
    private readonly Option<string?> _decimals = new("--decimals") { Description = "What stands before the decimals where no number tells it.", HelpName = "point|comma" };
    private readonly Option<string?> _deficits = new("--deficits") { Description = $"How extension deficits are written: positive ({WrittenDeficit.Words(DeficitSign.Positive)}) or negative.", HelpName = "positive|negative" };

    internal Command Build()
    {
        ExampledCommand command = new("csv", "Puts the readings, sessions or plan cells of a table into a saved case: all of them, or none.", $"""
            The preview tells every value that would come in, what is there already, and every refusal by row and column. Nothing that stands in the case is
            written over. A table has a header, a column "date" and either a column for each measure, with its unit in the head as "girth (cm)", or the
            columns measure, value and unit. Commas, semicolons or tabs, UTF-8 or UTF-16. A table of a plan has the columns lane, week and content, as the grid
            takes it ("-" empties a cell); what differs from the plan is set by hand, and what the checks then find is asked back.

            Examples:
              progression import csv readings.csv --case EXAMPLE-07
              progression import csv readings.csv --case EXAMPLE-07 --map "Knee flexion=flexion_active deg" --map "Remarks=ignore" --yes
              progression import csv sessions.csv --case EXAMPLE-07 --what sessions --dates day-first --yes

            {ExitCode.Help}
            """)
        { _desk.File, _desk.Case, _what, _map, _dates, _decimals, _deficits, _desk.Yes, _desk.Confirmed, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        GivenOptions given = new(line);
        CsvContent content = given.Word(_what, [("measures", CsvContent.Measures), ("sessions", CsvContent.Sessions), ("plan", CsvContent.Plan)]) ?? CsvContent.Measures;
        CsvChoices said = new()
        {
            Columns = Columns(line.GetValue(_map) ?? [], given.Problems),
            Days = given.Word(_dates, [("day-first", DayOrder.DayFirst), ("month-first", DayOrder.MonthFirst)]),
            Decimals = given.Word(_decimals, [("point", DecimalMark.Point), ("comma", DecimalMark.Comma)]),
            Deficits = given.Word(_deficits, [("positive", DeficitSign.Positive), ("negative", DeficitSign.Negative)]),
        };
        (ClinicalLibrary? library, int code) = libraries.Read(Name, line);
        if (given.Problems.Count > 0 || library is null)
        {
            output.Problems(Name, given.Problems);
            return library is null ? code : ExitCode.Usage;
        }

        (ImportAtHand? at, code) = _desk.Open(Name, library, line);
        if (at is null || _desk.IsRefused(Name, at))
        {
            return at is null ? code : ExitCode.NotPermitted;
        }

        (byte[]? bytes, code) = _desk.Bytes(Name, line);
        return bytes is null ? code : Import(bytes, (content, said), at, line);
    }

    private int Import(byte[] bytes, (CsvContent Content, CsvChoices Said) with, ImportAtHand at, ParseResult line)
    {
        RememberedColumns remembered = new(stores.Columns(at.Records));
        CsvChoices choices = with.Said;
        CsvImport read = CsvImport.Read(bytes, with.Content, at.Ground, heads => choices = with.Said.Over(remembered.Of(with.Content, heads)));
        int code = _desk.Finish(Name, at, read.Result, (line, $"csv {with.Content.ToString().ToLowerInvariant()}"));
        bool isSaid = with.Said != CsvChoices.None with { Columns = with.Said.Columns } || with.Said.Columns.Length > 0;
        if (code == ExitCode.Good && line.GetValue(_desk.Yes) && isSaid && remembered.Keep(with.Content, read.Heads, choices) is { } unkept)
        {
            output.Message($"progression {Name}: what the columns are is not remembered: {unkept}");
        }

        return code;
    }

    private static ImmutableArray<(string Head, string Means)> Columns(string[] typed, List<Problem> problems)
    {
        ImmutableArray<(string, string)>.Builder columns = ImmutableArray.CreateBuilder<(string, string)>();
        foreach (string one in typed)
        {
            int equals = one.LastIndexOf('=');
            if (equals <= 0 || equals == one.Length - 1)
            {
                problems.Add(new Problem("--map", "This is not a head and what it is.", "HEAD=NAME, as \"Knee flexion=flexion_active deg\"", Found.Of(one)));
            }
            else
            {
                columns.Add((one[..equals].Trim(), one[(equals + 1)..].Trim()));
            }
        }

        return columns.ToImmutable();
    }
}
