using System.CommandLine;
using Progression.App.Grid;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression open</c>: one saved plan in the grid, or printed where there is no terminal.</summary>
internal sealed class OpenCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries, WorkbookDoor door)
{
    private readonly Argument<string> _code = new("code") { Description = "The code of a saved case.", HelpName = "CODE" };

    internal Command Build()
    {
        ExampledCommand command = new("open", "Opens the plan of a saved case in the grid; without a terminal, prints it.", $"""
            Examples:
              progression open EXAMPLE-07
              progression open EXAMPLE-07 | less

            {ExitCode.Help}
            """)
        { _code, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        string text = line.GetRequiredValue(_code);
        if (CaseCode.Parse(text) is not { } code)
        {
            output.Problems("open", [new Problem("code", "This is not a case code.", CaseCode.Allowed, Found.Of(text))]);
            return ExitCode.Usage;
        }

        (ClinicalLibrary? library, int exit) = libraries.Read("open", line);
        if (library is null)
        {
            return exit;
        }

        string folder = stores.Folder(line);
        if (door.IsThere && Directory.Exists(folder))
        {
            return door.Open(door.Store(folder, library), code, onlyThat: true);
        }

        (PlanAtHand? at, exit) = input.FromStore(code, "open", library, folder);
        return at is null ? exit : Print(at);
    }

    private int Print(PlanAtHand at)
    {
        output.Data(PlanText.Of(input.Desk(at), at.Plan, PlanText.UsualWidth, at.Mark));
        return ExitCode.Good;
    }
}
