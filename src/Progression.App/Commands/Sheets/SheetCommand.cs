using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Progression.App.Commands.Plans;
using Progression.App.Stores;
using Progression.Core.Clinic;
using Progression.Core.Documents;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Core.Reviews;
using Progression.Core.Sheets;
using Progression.Records.Audit;
using Progression.Records.Storage;
using Progression.Records.Words;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Sheets;

/// <summary><c>progression sheet</c>: a week of a plan in plain words for the patient. What is not signed says so in large letters.</summary>
internal sealed class SheetCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private const string Name = "sheet";

    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<string?> _week = new("--week") { Description = "The post-op week. Default: the present one, or the nearest that is planned.", HelpName = "N" };
    private readonly Option<bool> _html = new("--html") { Description = "Print a page for a browser, in large print." };
    private readonly Option<string?> _words = new("--words") { Description = "A file with the words of another language. Default: English.", HelpName = "FILE" };
    private readonly Option<string?> _clinic = new("--clinic") { Description = "The clinic's own line above everything.", HelpName = "TEXT" };
    private readonly Option<string?> _contact = new("--contact") { Description = "Whom to call, as it is to be printed: \"the clinic, ext. 12\".", HelpName = "TEXT" };

    internal Command Build()
    {
        ExampledCommand command = new(Name, "Prints a week of a plan in plain words for the patient.", $"""
            Examples:
              progression sheet EXAMPLE-07
              progression sheet EXAMPLE-07 --week 3 --html --contact "the clinic, ext. 12" > week-3.html

            A plan that nobody has signed as it stands is marked as an unsigned draft, at the top and at the end.
            {ExitCode.Help}
            """)
        { _what, _week, _html, _words, _clinic, _contact, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (HomeWords? words, int code) = Words(line.GetValue(_words));
        if (words is null)
        {
            return code;
        }

        (PlanAtHand? at, code) = input.Take(line.GetRequiredValue(_what), Name, line);
        if (at is null)
        {
            return code;
        }

        GivenOptions given = new(line);
        int week = given.Count(_week, at.Plan.Weeks) ?? Math.Clamp(PostOpWeek.Of(at.Plan.Operation, input.Today), at.Plan.FirstWeek, at.Plan.Weeks);
        if (given.Problems.Count > 0)
        {
            output.Problems(Name, given.Problems);
            return ExitCode.Usage;
        }

        return Refused(at, line) ? ExitCode.NotPermitted : Print(at, words, week, line);
    }

    private (HomeWords? Words, int Code) Words(string? path)
    {
        if (path is null)
        {
            return (HomeWordsReader.English(), ExitCode.Good);
        }

        (HomeWords? words, ImmutableArray<FileProblem> problems) = HomeWordsReader.Read(path);
        foreach (FileProblem problem in problems)
        {
            output.Message(problem.ToString());
        }

        return (words, File.Exists(path) ? ExitCode.BadData : ExitCode.NoInput);
    }

    // A plan of a file is in no records: there is nobody to ask and nothing to write down.
    private bool Refused(PlanAtHand at, ParseResult line)
    {
        if (at.Standing.Plan.Revision == 0)
        {
            return false;
        }

        OpenRecords records = stores.Records(stores.Folder(line));
        string? told = records.Trail.Refusal(ClinicAct.PrintPlan, at.Case.Code.Text);
        bool refused = told is not null;
        told ??= records.Trail.Note(new AuditNote(
            AuditAct.Printed, at.Case.Code.Text, RecordKind.Plan, new RevisionRef(at.Standing.Plan.Revision, at.Standing.Plan.Hash), "home sheet"));
        if (told is not null)
        {
            output.Message($"progression {Name}: {told}");
        }

        return refused;
    }

    private int Print(PlanAtHand at, HomeWords words, int week, ParseResult line)
    {
        Document sheet = HomeSheet.Of(
            new HomeSheetOrder
            {
                Patient = at.Case,
                Plan = at.Plan,
                Library = at.Library,
                Words = words,
                Mark = Mark(at, words),
                IsSigned = at.Standing.State == SignatureState.Signed,
                Clinic = line.GetValue(_clinic) is { } clinic ? SafeText.OneLine(clinic) : null,
                Contact = line.GetValue(_contact) is { } contact ? SafeText.OneLine(contact) : null,
            },
            week);
        output.Data(line.GetValue(_html) ? DocumentHtml.Page(sheet).TrimEnd() : string.Join('\n', DocumentText.Lines(sheet)));
        return ExitCode.Good;
    }

    // In the words of the sheet; what makes it possible to check a signature is the same in every language.
    private static string Mark(PlanAtHand at, HomeWords words) => at.Standing switch
    {
        { State: SignatureState.Signed, Signature: { } signed } => words.Text(
            "labels.signed",
            ("name", signed.By.Name),
            ("day", signed.At.ToUniversalTime().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
            ("revision", signed.Plan.Revision.ToString(CultureInfo.InvariantCulture)))
            + $" ({SignatureWords.Short(signed.Plan.Hash)}{(at.ChainHead is { } head ? $" {SignatureWords.Short(head)}" : "")})",
        { State: SignatureState.ChangedSince } => words.Text("labels.changed"),
        _ => words.Text("labels.unsigned"),
    };
}
