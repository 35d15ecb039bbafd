using System.CommandLine;

namespace Progression.App.Commands.Manual;

/// <summary><c>progression completion</c>: a script that lets a shell complete commands, options and their values.</summary>
internal sealed class CompletionCommand(CommandOutput output)
{
    private static readonly string[] Shells = ["bash", "zsh", "fish"];

    private readonly Argument<string> _shell = new("shell") { Description = "Which shell: bash, zsh or fish.", HelpName = "SHELL" };

    internal Command Build()
    {
        _shell.AcceptOnlyFromAmong(Shells);
        ExampledCommand command = new("completion", "Prints a script that completes this program's commands and options in a shell.", $"""
            Examples:
              source <(progression completion bash)
              progression completion zsh > ~/.zfunc/_progression
              progression completion fish > ~/.config/fish/completions/progression.fish

            {ExitCode.Help}
            """)
        { _shell };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        CommandPage root = CommandPage.Of(line.RootCommandResult.Command);
        output.Data(line.GetRequiredValue(_shell) switch
        {
            "bash" => BashScript.Of(root),
            "zsh" => ZshScript.Of(root),
            _ => FishScript.Of(root),
        });
        return ExitCode.Good;
    }
}
