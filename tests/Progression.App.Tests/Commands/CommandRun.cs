using Progression.App.Commands;

namespace Progression.App.Tests.Commands;

/// <summary>One run of the command line inside the test, with what it printed.</summary>
internal sealed record CommandRun(int Code, string Data, string Messages)
{
    internal static CliEnvironment NoTerminal { get; } = new()
    {
        Input = TextReader.Null,
        HasTerminal = false,
        Clock = TimeProvider.System,
        Variable = _ => null,
    };

    internal static CommandRun Of(params string[] args) => In(NoTerminal, args);

    internal static CommandRun In(CliEnvironment environment, params string[] args)
    {
        using StringWriter data = new();
        using StringWriter messages = new();
        int code = Cli.Run(args, data, messages, environment);
        return new CommandRun(code, data.ToString(), messages.ToString());
    }
}
