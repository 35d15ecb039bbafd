using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Library;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Library;

/// <summary>"progression library": what is in the clinical library, and whether a clinic's own files are good.</summary>
internal static class LibraryCommand
{
    private const string ListClosing = """

        Examples:
          progression library list
          progression library list --library clinic-files
        """;

    private const string ShowClosing = """

        Examples:
          progression library show ladder.lag-closed
          progression library show strong-15-twice-daily --json
        """;

    private const string CheckClosing = """

        The folder may hold any of limits.yaml, ladder.yaml, regimens.yaml, exercises.yaml, milestones.yaml, screening.yaml and
        measures.yaml. An entry with a shipped id replaces the shipped one, a new id is added, "remove: yes" takes one away.
        Exit code 0 when all is good, 78 when something is wrong, 66 when there is no such folder.

        Example:
          progression library check clinic-files
        """;

    /// <summary>The command with its three parts.</summary>
    public static Command Create(CommandOutput output) =>
        new("library", "Shows the clinical library and checks a clinic's own files.") { List(output), Show(output), Check(output) };

    private static ExampledCommand List(CommandOutput output)
    {
        (Option<string?> folder, Option<bool> json) = (FolderOption(), JsonOption());
        ExampledCommand list = new("list", "Lists every entry, kind by kind, with its standing.", ListClosing) { folder, json };
        list.SetAction(parsed => WithLibrary("library list", parsed.GetValue(folder), output, library =>
        {
            Answer(output, parsed.GetValue(json), () => output.Json(LibraryJson.List(library)), () => LibraryText.List(library));
            return ExitCode.Good;
        }));
        return list;
    }

    private static ExampledCommand Show(CommandOutput output)
    {
        (Option<string?> folder, Option<bool> json) = (FolderOption(), JsonOption());
        Argument<string> id = new("id") { Description = "The id of an entry, as the list shows it." };
        ExampledCommand show = new("show", "Shows every field of an entry with its source and standing.", ShowClosing) { id, folder, json };
        show.SetAction(parsed => WithLibrary("library show", parsed.GetValue(folder), output, library =>
        {
            string named = parsed.GetRequiredValue(id);
            LibraryCard[] all = [.. LibraryCards.Of(library)];
            LibraryCard[] cards = [.. all.Where(card => card.Id == named)];
            if (cards.Length == 0)
            {
                string meant = NearestWord.To(named, all.Select(card => card.Id)) is string near ? $" Did you mean \"{near}\"?" : "";
                output.Problems("library show", [new Problem("id", "There is no such entry." + meant, "an id from \"progression library list\"", Found.Of(named))]);
                return ExitCode.NoInput;
            }

            Answer(output, parsed.GetValue(json), () => output.Json(LibraryJson.Show(cards)), () => string.Join("\n\n", cards.Select(LibraryText.Show)));
            return ExitCode.Good;
        }));
        return show;
    }

    private static ExampledCommand Check(CommandOutput output)
    {
        Option<bool> json = JsonOption();
        Argument<string> folder = new("folder") { Description = "The clinic's own library files." };
        ExampledCommand check = new("check", "Reads a clinic's own files over the shipped ones and tells everything that is wrong.", CheckClosing) { folder, json };
        check.SetAction(parsed => Check(parsed.GetRequiredValue(folder), parsed.GetValue(json), output));
        return check;
    }

    private static int Check(string folder, bool json, CommandOutput output)
    {
        if (!Directory.Exists(folder))
        {
            return NoFolder("library check", folder, output);
        }

        LibraryResult result = LibraryReader.Read(folder);
        Tell("library check", result, output);
        if (json)
        {
            output.Json(LibraryJson.Check(folder, result));
        }
        else if (result.Library is ClinicalLibrary library)
        {
            output.Data($"The files in {folder} are good. Library version {library.Version}.");
        }

        return result.Library is null ? ExitCode.BadConfiguration : ExitCode.Good;
    }

    private static int WithLibrary(string command, string? folder, CommandOutput output, Func<ClinicalLibrary, int> use)
    {
        if (folder is not null && !Directory.Exists(folder))
        {
            return NoFolder(command, folder, output);
        }

        LibraryResult result = LibraryReader.Read(folder);
        Tell(command, result, output);
        return result.Library is null ? ExitCode.BadConfiguration : use(result.Library);
    }

    private static int NoFolder(string command, string folder, CommandOutput output)
    {
        output.Problems(command, [new Problem("folder", "There is no such folder.", "a folder with library files", Found.Of(folder))]);
        return ExitCode.NoInput;
    }

    private static void Tell(string command, LibraryResult result, CommandOutput output)
    {
        foreach (FileProblem problem in result.Problems)
        {
            output.Message($"progression {command}: {problem}");
        }
    }

    private static void Answer(CommandOutput output, bool json, Action asJson, Func<string> asText)
    {
        if (json)
        {
            asJson();
        }
        else
        {
            output.Data(asText());
        }
    }

    private static Option<bool> JsonOption() => new("--json") { Description = "Print JSON; values are written as in the library files." };

    private static Option<string?> FolderOption() => new("--library") { Description = "A clinic's own library files, laid over the shipped ones.", HelpName = "folder" };
}
