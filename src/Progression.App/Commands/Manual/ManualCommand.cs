using System.CommandLine;

namespace Progression.App.Commands.Manual;

/// <summary><c>progression manual</c>: the manual page, for <c>man</c>.</summary>
internal sealed class ManualCommand(CommandOutput output)
{
    internal Command Build()
    {
        ExampledCommand command = new("manual", "Prints the manual page, for man to show.", $"""
            Examples:
              progression manual | man -l -
              progression manual > ~/.local/share/man/man1/progression.1

            {ExitCode.Help}
            """);
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        output.Data(ManPage.Of(CommandPage.Of(line.RootCommandResult.Command), VersionAction.Version).TrimEnd());
        return ExitCode.Good;
    }
}
