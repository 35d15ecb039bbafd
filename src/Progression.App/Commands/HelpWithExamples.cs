using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Progression.App.Commands;

/// <summary>The usual help, then the command's examples and notes as they were written.</summary>
public sealed class HelpWithExamples(HelpAction usual) : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        ArgumentNullException.ThrowIfNull(parseResult);
        int code = usual.Invoke(parseResult);
        TextWriter output = parseResult.InvocationConfiguration.Output;
        output.WriteLine(parseResult.CommandResult.Command is ExampledCommand command ? command.Closing : ExitCode.Help);
        return code;
    }
}
