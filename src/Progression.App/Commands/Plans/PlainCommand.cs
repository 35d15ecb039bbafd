using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression plain</c>: the workbook in line mode, for screen readers, simple terminals and scripts.</summary>
internal sealed class PlainCommand(CliEnvironment environment, CommandOutput output, StorePlace stores, LibraryPlace libraries, WorkbookDoor door)
{
    private readonly Argument<string?> _code = new("code") { Description = "The code of a saved case; without one, the list of cases.", HelpName = "CODE", Arity = ArgumentArity.ZeroOrOne };

    internal Command Build()
    {
        ExampledCommand command = new("plain", "The workbook in line mode: prompts and answers, a fact a line, nothing drawn.", """
            For screen readers, simple terminals and scripts: everything of the workbook can be done. Lines are read
            from standard input, also when it is no terminal. "help" tells how it works, "end" leaves.

            Examples:
              progression plain
              progression plain EXAMPLE-07
              printf 'read findings\nend\n' | progression plain EXAMPLE-07

            Exit codes:
              0 left, or the input ended with nothing unsaved
              1 the input ended with unsaved work, which is kept as a draft
              64 command line not understood   66 no such case   74 reading or writing failed
            """)
        { _code, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        string? text = line.GetValue(_code);
        CaseCode? code = text is null ? null : CaseCode.Parse(text);
        if (text is not null && code is null)
        {
            output.Problems("plain", [new Problem("code", "This is not a case code.", CaseCode.Allowed, Found.Of(text))]);
            return ExitCode.Usage;
        }

        (ClinicalLibrary? library, int exit) = libraries.Read("plain", line);
        return library is null ? exit
            : environment.OpenPlain is null ? ExitCode.Internal
            : door.OpenPlain(door.Store(stores.Folder(line), library), code);
    }
}
