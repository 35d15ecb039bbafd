using System.CommandLine;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Records.Library;

namespace Progression.App.Commands.Library;

/// <summary>"progression library": what is in the clinical library, and whether a clinic's own files are good.</summary>
internal sealed class LibraryCommand(CommandOutput output, LibraryPlace libraries)
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

        The folder may hold any of limits.yaml, ladder.yaml, regimens.yaml, exercises.yaml, milestones.yaml, screening.yaml,
        measures.yaml and forecasts.yaml. An entry with a shipped id replaces the shipped one, a new id is added, "remove: yes" takes one away.
        Exit code 0 when all is good, 78 when something is wrong, 66 when there is no such folder.

        Example:
          progression library check clinic-files
        """;

    /// <summary>The command with its three parts.</summary>
    public Command Build() =>
        new("library", "Shows the clinical library and checks a clinic's own files.") { List(), Show(), Check() };

    private ExampledCommand List()
    {
        Option<bool> json = JsonOption();
        ExampledCommand list = new("list", "Lists every entry, kind by kind, with its standing.", ListClosing) { libraries.Option, json };
        list.SetAction(parsed => WithLibrary("library list", parsed, library =>
        {
            Answer(parsed.GetValue(json), () => output.Json(LibraryJson.List(library)), () => LibraryText.List(library));
            return ExitCode.Good;
        }));
        return list;
    }

    private ExampledCommand Show()
    {
        Option<bool> json = JsonOption();
        Argument<string> id = new("id") { Description = "The id of an entry, as the list shows it." };
        ExampledCommand show = new("show", "Shows every field of an entry with its source and standing.", ShowClosing) { id, libraries.Option, json };
        show.SetAction(parsed => WithLibrary("library show", parsed, library =>
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

            Answer(parsed.GetValue(json), () => output.Json(LibraryJson.Show(cards)), () => string.Join("\n\n", cards.Select(LibraryText.Show)));
            return ExitCode.Good;
        }));
        return show;
    }

    private ExampledCommand Check()
    {
        Option<bool> json = JsonOption();
        Argument<string> folder = new("folder") { Description = "The clinic's own library files." };
        ExampledCommand check = new("check", "Reads a clinic's own files over the shipped ones and tells everything that is wrong.", CheckClosing) { folder, json };
        check.SetAction(parsed => Check(parsed.GetRequiredValue(folder), parsed.GetValue(json)));
        return check;
    }

    private int Check(string folder, bool json)
    {
        int? wrong = libraries.Read("library check", folder, out LibraryResult? result);
        if (json && result is not null)
        {
            output.Json(LibraryJson.Check(folder, result));
        }
        else if (result?.Library is ClinicalLibrary library)
        {
            output.Data($"The files in {folder} are good. Library version {library.Version}.");
        }

        return wrong ?? ExitCode.Good;
    }

    private int WithLibrary(string command, ParseResult line, Func<ClinicalLibrary, int> use)
    {
        (ClinicalLibrary? library, int code) = libraries.Read(command, line);
        return library is null ? code : use(library);
    }

    private void Answer(bool json, Action asJson, Func<string> asText)
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
}
