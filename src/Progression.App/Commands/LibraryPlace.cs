using System.CommandLine;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.App.Commands;

/// <summary>Finds the clinical library a command works with: the shipped one, with a clinic's own folder over it where one is named.</summary>
internal sealed class LibraryPlace(CliEnvironment environment, CommandOutput output)
{
    /// <summary>The option every command with a library has.</summary>
    public Option<string> Option { get; } = new("--library")
    {
        Description = "A clinic's own library files, laid over the shipped ones. Default: PROGRESSION_LIBRARY, else none.",
        HelpName = "FOLDER",
    };

    /// <summary>The library; null after every problem was told.</summary>
    public ClinicalLibrary? Read(ParseResult? line)
    {
        string? folder = line?.GetValue(Option) ?? environment.Variable("PROGRESSION_LIBRARY");
        LibraryResult result = LibraryReader.Read(string.IsNullOrEmpty(folder) ? null : folder);
        foreach (object problem in result.Problems)
        {
            output.Message(problem.ToString()!);
        }

        return result.Library;
    }
}
