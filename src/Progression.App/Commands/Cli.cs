using System.CommandLine;
using System.CommandLine.Help;
using Progression.App.Commands.Audit;
using Progression.App.Commands.Caseload;
using Progression.App.Commands.Clinic;
using Progression.App.Commands.Demo;
using Progression.App.Commands.Dose;
using Progression.App.Commands.Exchange;
using Progression.App.Commands.Library;
using Progression.App.Commands.Manual;
using Progression.App.Commands.Plans;
using Progression.App.Commands.Reassess;
using Progression.App.Commands.Records;
using Progression.App.Commands.Reviews;
using Progression.App.Commands.Sheets;
using Progression.App.Commands.Summary;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Storage;

namespace Progression.App.Commands;

/// <summary>The command line: which commands there are, and what happens when one cannot be understood or fails.</summary>
public static class Cli
{
    /// <summary>What is printed when the program is started without a command and without a terminal.</summary>
    public const string Usage = """
        Progression plans rehabilitation of a knee after joint replacement, week by week.
        It suggests; a licensed clinician decides.

        On a terminal, "progression" opens the workbook. Without one, give a command:
          progression demo
          progression dose --on 15s --off 45s --contractions 15 --count-last-rest yes
          progression --help
        """;

    /// <summary>Runs one command line.</summary>
    /// <param name="args">The words after the program's name.</param>
    /// <param name="stdout">Takes the data.</param>
    /// <param name="stderr">Takes the messages.</param>
    /// <param name="environment">The world around the command.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, TextWriter stdout, TextWriter stderr, CliEnvironment environment)
    {
        CommandOutput output = new(stdout, stderr);
        Option<bool> debug = new("--debug") { Description = "When the program fails, print the full trace.", Recursive = true };
        RootCommand root = Commands(output, environment, debug);
        ParseResult parsed = root.Parse(args, new ParserConfiguration { EnablePosixBundling = false, ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count > 0 && parsed.Action is not (HelpWithExamples or VersionAction))
        {
            return RefuseUsage(parsed, output);
        }

        try
        {
            // Kept in memory so that help passes the same gate as everything else.
            using StringWriter help = new();
            int code = parsed.Invoke(new InvocationConfiguration { Output = help, Error = help, EnableDefaultExceptionHandler = false });
            if (help.GetStringBuilder().Length > 0)
            {
                output.Data(help.ToString().TrimEnd());
            }

            return code;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            return Failed(fault, parsed.GetValue(debug), output);
        }
    }

    private static RootCommand Commands(CommandOutput output, CliEnvironment environment, Option<bool> debug)
    {
        RootCommand root = new("Plans rehabilitation of a knee after joint replacement, week by week.") { debug };
        root.Directives.Clear();
        StorePlace stores = new(environment, output);
        LibraryPlace libraries = new(environment, output);
        PlanInput plans = new(output, environment, stores, libraries);
        root.Subcommands.Add(new ListCommand(output, environment, stores, libraries).Build());
        root.Subcommands.Add(new ReviewsCommand(output, environment, stores).Build());
        root.Subcommands.Add(new DraftCommand(output, plans, stores, libraries).Build());
        root.Subcommands.Add(new CheckCommand(output, plans, stores, libraries).Build());
        root.Subcommands.Add(new WhyCommand(output, plans, stores, libraries).Build());
        PaperWorld papers = new(output, plans, stores, libraries);
        root.Subcommands.Add(SheetCommand.Build(papers));
        root.Subcommands.Add(CardCommand.Build(papers));
        root.Subcommands.Add(NoteCommand.Build(papers));
        root.Subcommands.Add(PlotCommand.Build(papers));
        root.Subcommands.Add(ExportCommand.Build(papers, environment));
        root.Subcommands.Add(ImportCommand.Build(output, environment, stores, libraries));
        root.Subcommands.Add(new WordsCommand(output, libraries).Build());
        root.Subcommands.Add(new SummaryCommand(output, environment, stores, libraries).Build());
        root.Subcommands.Add(new CompareCommand(output, plans, stores, libraries).Build());
        root.Subcommands.Add(new ForecastCommand(output, plans, stores, libraries).Build());
        root.Subcommands.Add(new ReassessCommand(output, environment, stores, libraries).Build());
        root.Subcommands.Add(new LogCommand(output, environment, stores, libraries).Build());
        root.Subcommands.Add(new ExampleCommand(output).Build());
        root.Subcommands.Add(new DoseCommand(output, libraries).Build());
        root.Subcommands.Add(new LibraryCommand(output, libraries).Build());
        root.Subcommands.Add(new AuditCommand(output, environment, stores).Build());
        root.Subcommands.Add(new ClinicCommand(output, stores).Build());
        WorkbookDoor door = new(environment, output, stores);
        root.Subcommands.Add(new OpenCommand(output, plans, stores, libraries, door).Build());
        root.Subcommands.Add(new PlainCommand(environment, output, stores, libraries, door).Build());
        root.Subcommands.Add(new DemoCommand(output, stores, libraries, door).Build());
        root.Subcommands.Add(new RecordsCommand(output, environment, stores).Build());
        root.Subcommands.Add(new ManualCommand(output).Build());
        root.Subcommands.Add(new CompletionCommand(output).Build());
        root.Options.Add(stores.Option);
        root.Options.Add(libraries.Option);
        root.SetAction(line => door.IsThere ? OpenList(line, stores, libraries, door) : door.IsDumb ? OpenPlain(line, stores, libraries, (door, output)) : Explain(output, environment));
        foreach (Option option in root.Options)
        {
            if (option is HelpOption { Action: HelpAction usual } help)
            {
                help.Action = new HelpWithExamples(usual);
            }
            else if (option is VersionOption version)
            {
                version.Action = new VersionAction();
            }
        }

        return root;
    }

    private static int OpenList(ParseResult line, StorePlace stores, LibraryPlace libraries, WorkbookDoor door)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("open", line);
        return library is null ? code : door.Open(door.Store(stores.Folder(line), library));
    }

    private static int OpenPlain(ParseResult line, StorePlace stores, LibraryPlace libraries, (WorkbookDoor Door, CommandOutput Output) to)
    {
        to.Output.Message("progression: TERM says this terminal is dumb, so this is line mode, as \"progression plain\" opens it anywhere.");
        (ClinicalLibrary? library, int code) = libraries.Read("plain", line);
        return library is null ? code : to.Door.OpenPlain(to.Door.Store(stores.Folder(line), library));
    }

    private static int Explain(CommandOutput output, CliEnvironment environment)
    {
        if (environment.WhyNoTerminal is { } why)
        {
            output.Message($"progression: {why}");
        }

        output.Data(Usage);
        return ExitCode.Good;
    }

    private static int RefuseUsage(ParseResult parsed, CommandOutput output)
    {
        string name = parsed.CommandResult.Command is RootCommand ? "progression" : $"progression {parsed.CommandResult.Command.Name}";
        foreach (string message in parsed.Errors.Select(error => error.Message).Distinct())
        {
            output.Message($"{name}: {SafeText.OneLine(message)}");
        }

        output.Message($"Run \"{name} --help\" to see what is accepted.");
        return ExitCode.Usage;
    }

    private static int Failed(Exception fault, bool debug, CommandOutput output)
    {
        (int code, string what) = fault switch
        {
            UnauthorizedAccessException => (ExitCode.NotPermitted, "The operating system does not permit it: " + fault.Message),
            FileNotFoundException or DirectoryNotFoundException => (ExitCode.NoInput, fault.Message),
            StoreException store => (StorePlace.CodeOf(store.Fault), store.Message),
            IOException => (ExitCode.InputOutput, "Reading or writing failed: " + fault.Message),
            _ => (ExitCode.Internal, $"A fault inside the program ({fault.GetType().Name}); run again with --debug to see where."),
        };
        foreach (string line in what.Split('\n'))
        {
            output.Message("progression: " + SafeText.OneLine(line));
        }

        if (debug)
        {
            output.Message(fault.ToString());
        }

        return code;
    }
}
