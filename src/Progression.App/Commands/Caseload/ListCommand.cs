using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Caseload;
using Progression.App.Stores;
using Progression.Core.Library;

namespace Progression.App.Commands.Caseload;

/// <summary><c>progression list</c>: the cases of a store with what is due, behind, unsigned and blocked.</summary>
internal sealed class ListCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private static readonly ImmutableArray<(string Word, CaseFilter Value)> Filters = [.. Enum.GetValues<CaseFilter>().Select(filter => (CaseWords.Of(filter), filter))];

    private static readonly ImmutableArray<(string Word, CaseOrder Value)> Orders = [.. Enum.GetValues<CaseOrder>().Select(order => (CaseWords.Of(order), order))];

    private readonly Option<string?> _only = new("--only") { Description = $"Which cases: {Words(Filters)}. Default: all.", HelpName = "WHICH" };
    private readonly Option<string?> _order = new("--order") { Description = $"The order: {Words(Orders)}. Default: code.", HelpName = "BY" };
    private readonly Option<string?> _find = new("--find") { Description = "A part of the code, of the knee (left, right) or of the name of who saved last.", HelpName = "TEXT" };
    private readonly Option<bool> _json = new("--json") { Description = "Print the list as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("list", "Lists the cases: what is due, who is behind, what is not signed, what is blocked.", $"""
            Examples:
              progression list --only due --order due
              progression list --find left --json

            JSON: schema "list/1" with today, total and cases; each with its state, what is due, what is behind and why it is blocked.
            {ExitCode.Help}
            """)
        { _only, _order, _find, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        GivenOptions given = new(line);
        CaseFilter? only = given.Word(_only, Filters);
        CaseOrder? order = given.Word(_order, Orders);
        if (given.Problems.Count > 0)
        {
            output.Problems("list", given.Problems);
            return ExitCode.Usage;
        }

        (ClinicalLibrary? library, int code) = libraries.Read("list", line);
        if (library is null)
        {
            return code;
        }

        CaseListing listing = CaseListing.Read(Store(stores.Folder(line), library));
        CaseChoice choice = new() { Filter = only ?? CaseFilter.All, Order = order ?? CaseOrder.Code, Find = (line.GetValue(_find) ?? "").Trim() };
        ImmutableArray<CaseLine> cases = choice.Of(choice.Ordered(listing.Cases));
        if (line.GetValue(_json))
        {
            output.Json(ListAnswer.Of(listing, cases));
        }
        else
        {
            output.Data(ListText.Of(listing, cases));
        }

        return ExitCode.Good;
    }

    private OpenStore Store(string folder, ClinicalLibrary library)
    {
        OpenRecords records = stores.Records(folder);
        return new OpenStore { Folder = Path.GetFullPath(folder), Book = records.Book, Drafts = records.Drafts, Library = library, Clock = environment.Clock, Progress = stores.Progress() };
    }

    private static string Words<T>(ImmutableArray<(string Word, T Value)> words) => string.Join(", ", words.Select(one => one.Word));
}
