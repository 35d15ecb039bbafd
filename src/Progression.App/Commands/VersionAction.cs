using System.CommandLine;
using System.CommandLine.Invocation;
using System.Reflection;

namespace Progression.App.Commands;

/// <summary>Prints the name and version of this program, whatever process it runs in.</summary>
public sealed class VersionAction : SynchronousCommandLineAction
{
    /// <summary>The version without build details: "1.0.0".</summary>
    public static string Version =>
        typeof(VersionAction).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        ArgumentNullException.ThrowIfNull(parseResult);
        parseResult.InvocationConfiguration.Output.WriteLine($"progression {Version}");
        return ExitCode.Good;
    }
}
