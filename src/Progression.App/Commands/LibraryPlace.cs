using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.App.Commands;

/// <summary>Finds the clinical library a command works with: the shipped one, with a clinic's own folder over it where one is named.</summary>
internal sealed class LibraryPlace(CliEnvironment environment, CommandOutput output)
{
    /// <summary>The option every command with a library has.</summary>
    public Option<string?> Option { get; } = new("--library")
    {
        Description = "A clinic's own library files, laid over the shipped ones. Default: PROGRESSION_LIBRARY, else none.",
        HelpName = "FOLDER",
    };

    /// <summary>The library; without one, the exit code after everything wrong was told.</summary>
    /// <param name="command">The words of the command, for its messages.</param>
    /// <param name="line">The command line; null where there is none.</param>
    public (ClinicalLibrary? Library, int Code) Read(string command, ParseResult? line)
    {
        string? named = line?.GetValue(Option) ?? environment.Variable("PROGRESSION_LIBRARY");
        return Read(command, string.IsNullOrEmpty(named) ? null : named, out LibraryResult? result) is int code ? (null, code) : (result!.Library, ExitCode.Good);
    }

    /// <summary>Reads a folder over the shipped files and tells everything wrong; the exit code, or null when all is good.</summary>
    /// <param name="command">The words of the command, for its messages.</param>
    /// <param name="folder">The folder; null for the shipped files alone.</param>
    /// <param name="result">What was read; null when there is no such folder.</param>
    public int? Read(string command, string? folder, out LibraryResult? result)
    {
        result = null;
        if (folder is not null && !Directory.Exists(folder))
        {
            output.Problems(command, [new Problem("folder", "There is no such folder.", "a folder with library files", Found.Of(folder))]);
            return ExitCode.NoInput;
        }

        result = LibraryReader.Read(folder);
        foreach (FileProblem problem in result.Problems)
        {
            output.Message($"progression {command}: {problem}");
        }

        return result.Library is null ? ExitCode.BadConfiguration : null;
    }
}
