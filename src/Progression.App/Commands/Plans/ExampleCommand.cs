using System.CommandLine;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression example</c>: a commented case file to start from, or the schema of case files.</summary>
internal sealed class ExampleCommand(CommandOutput output)
{
    private readonly Option<bool> _schema = new("--schema") { Description = "Print the JSON Schema of case files instead." };

    internal Command Build()
    {
        ExampledCommand command = new("example", "Prints a commented case file to start from. The person in it is invented.", $"""
            Examples:
              progression example > case.yaml
              progression example --schema > case.schema.json

            {ExitCode.Help}
            """)
        { _schema };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        string name = line.GetValue(_schema) ? "case.schema.json" : "case.yaml";
        using Stream shipped = typeof(ExampleCommand).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not in the program.");
        using StreamReader reader = new(shipped);
        output.Data(reader.ReadToEnd().TrimEnd());
        return ExitCode.Good;
    }
}
