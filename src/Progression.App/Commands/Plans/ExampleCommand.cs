using System.CommandLine;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression example</c>: a commented file to start from, or the schema of such files.</summary>
internal sealed class ExampleCommand(CommandOutput output)
{
    private static readonly string[] Kinds = ["case", "assessment", "session", "clinic"];

    private readonly Argument<string> _kind = new("kind")
    {
        Description = $"Which file: {string.Join(", ", Kinds)}. Default: {Kinds[0]}.",
        HelpName = "KIND",
        DefaultValueFactory = _ => Kinds[0],
    };

    private readonly Option<bool> _schema = new("--schema") { Description = "Print the JSON Schema of such files instead." };

    internal Command Build()
    {
        _kind.AcceptOnlyFromAmong(Kinds);
        ExampledCommand command = new("example", "Prints a commented case, assessment, session or clinic file to start from. The person in it is invented.", $"""
            Examples:
              progression example > case.yaml
              progression example assessment > assessment.yaml
              progression example clinic > clinic.yaml
              progression example --schema > case.schema.json

            {ExitCode.Help}
            """)
        { _kind, _schema };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        string name = line.GetRequiredValue(_kind) + (line.GetValue(_schema) ? ".schema.json" : ".yaml");
        using Stream shipped = typeof(ExampleCommand).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not in the program.");
        using StreamReader reader = new(shipped);
        output.Data(reader.ReadToEnd().TrimEnd());
        return ExitCode.Good;
    }
}
