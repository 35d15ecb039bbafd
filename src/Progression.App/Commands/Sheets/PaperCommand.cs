using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Commands.Plans;
using Progression.App.Commands.Reassess;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Sheets;
using Progression.Records.Audit;
using Progression.Records.Storage;
using Progression.Records.Words;
using Progression.Records.Yaml;

namespace Progression.App.Commands.Sheets;

/// <summary>A command that makes a paper: as text on standard output, or as a file. Who may have it is asked, and that they had it is written down.</summary>
/// <param name="name">The words of the command.</param>
/// <param name="papers">What it makes: one paper, or several of the same formats of which --what names one.</param>
/// <param name="world">What it needs of the program.</param>
internal sealed class PaperCommand(string name, ImmutableArray<Paper> papers, PaperWorld world)
{
    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<string?> _week = new("--week") { Description = "The post-op week. Default: the present one, or the nearest that is planned.", HelpName = "N" };
    private readonly Option<string?> _format = new("--format") { HelpName = "FORMAT" };
    private readonly Option<string?> _out = new("--out") { Description = "Write a file; its ending may tell the format. Nothing is written over without --force.", HelpName = "FILE" };
    private readonly Option<bool> _force = new("--force") { Description = "With --out: a file of that name may be written over." };
    private readonly Option<bool> _letter = new("--letter") { Description = "Pages of US Letter size. Default: A4." };
    private readonly Option<string?> _words = new("--words") { Description = "A file with the words of another language. Default: English.", HelpName = "FILE" };
    private readonly Option<string?> _measure = new("--measure") { Description = $"{MeasureWords.Help} Default: lag.", HelpName = "MEASURE" };
    private readonly Option<string?> _kind = new("--what") { HelpName = "WHAT" };
    private readonly Option<string?> _clinic = new("--clinic") { Description = "The clinic's own line above everything. Default: what clinic.yaml says.", HelpName = "TEXT" };
    private readonly Option<string?> _contact = new("--contact") { Description = "Whom to call, as it is to be printed: \"the clinic, ext. 12\". Default: what clinic.yaml says.", HelpName = "TEXT" };

    /// <summary>Whether it takes the words of another language.</summary>
    internal bool TakesWords { get; init; }

    /// <summary>Whether it takes the clinic's own line and number.</summary>
    internal bool TakesHeader { get; init; } = true;

    /// <summary>Whether it takes a measure.</summary>
    internal bool TakesMeasure { get; init; }

    /// <summary>Whether it is printed on pages by somebody, and carries what was signed.</summary>
    internal bool IsPrinted { get; init; } = true;

    /// <summary>Options of its own.</summary>
    internal ImmutableArray<Option> Options { get; init; } = [];

    /// <summary>Completes the order from those options; what is wrong with them is collected.</summary>
    internal Func<PaperOrder, GivenOptions, (ParseResult Line, OpenRecords? Records), PaperOrder> Complete { get; init; } = (order, _, _) => order;

    /// <summary>A command of one paper.</summary>
    internal PaperCommand(string name, Paper paper, PaperWorld world)
        : this(name, [paper], world)
    {
    }

    internal Command Build(string explains, string examples)
    {
        Paper paper = papers[0];
        _format.Description = $"{string.Join(", ", paper.Formats.Select(PaperFormats.Word))}. Default: what the ending of --out tells, else {PaperFormats.Word(paper.Formats[0])}.";
        _kind.Description = $"{string.Join("; ", papers.Select(each => $"{WordOf(each)}: {each.Explains}"))}. Default: {WordOf(papers[0])}.";
        ExampledCommand command = new(name.Split(' ')[^1], explains, $"""
            {examples}
            {(IsPrinted ? "\nA plan that nobody has signed as it stands is marked as an unsigned draft." : "")}
            {ExitCode.Help}
            """)
        { _what, _out, _force, world.Stores.Option, world.Libraries.Option };
        foreach ((Option option, bool takes) in (ImmutableArray<(Option, bool)>)[(_format, paper.Formats.Length > 1), (_letter, IsPrinted), (_week, paper.IsOfAWeek), (_words, TakesWords), (_measure, TakesMeasure), (_clinic, TakesHeader), (_contact, TakesHeader), (_kind, papers.Length > 1), .. Options.Select(option => (option, true))])
        {
            if (takes)
            {
                command.Options.Add(option);
            }
        }

        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (HomeWords? words, int code) = Words(TakesWords ? line.GetValue(_words) : null);
        if (words is null)
        {
            return code;
        }

        (PlanAtHand? at, code) = world.Input.Take(line.GetRequiredValue(_what), name, line);
        if (at is null)
        {
            return code;
        }

        GivenOptions given = new(line);
        Paper paper = given.Word(_kind, [.. papers.Select((each, place) => (WordOf(each), place))]) is { } place ? papers[place] : papers[0];
        int week = given.Count(_week, at.Plan.Weeks) ?? Math.Clamp(PostOpWeek.Of(at.Plan.Operation, world.Input.Today), at.Plan.FirstWeek, at.Plan.Weeks);
        Measure? measure = given.Take(_measure, (field, text) => MeasureWords.Read(field, text, at.Library));
        PaperFormat? named = given.Word(_format, [.. paper.Formats.Select(each => (PaperFormats.Word(each), each))]);
        string? file = line.GetValue(_out);
        PaperFormat format = named ?? (file is null ? paper.Formats[0] : PaperFormats.Of(file) is { } ending && paper.Formats.Contains(ending) ? ending : paper.Formats[0]);
        if (given.Problems.Count > 0)
        {
            world.Output.Problems(name, given.Problems);
            return ExitCode.Usage;
        }

        OpenRecords? records = at.Standing.Plan.Revision == 0 ? null : world.Stores.Records(world.Stores.Folder(line));
        PaperOrder order = Complete(Order(at, words, week, line, records) with { Measure = measure?.Id }, given, (line, records));
        if (given.Problems.Count > 0)
        {
            world.Output.Problems(name, given.Problems);
            return ExitCode.Usage;
        }

        return Make((paper, order, at), (format, file), line, records);
    }

    private int Make((Paper Paper, PaperOrder Order, PlanAtHand At) what, (PaperFormat Format, string? File) to, ParseResult line, OpenRecords? records)
    {
        if (records?.Trail.Refusal(what.Paper.Act, what.At.Case.Code.Text) is { } refusal)
        {
            world.Output.Message($"progression {name}: {refusal}");
            return ExitCode.NotPermitted;
        }

        // Written down is what was made, before anybody has it.
        PaperMade made = what.Paper.Make(what.Order, to.Format);
        string? told = made.WhyNot ?? Noted(what, records);
        if (told is not null)
        {
            world.Output.Message($"progression {name}: {told}");
        }

        return made.WhyNot is null ? Deliver(made, to, line, records) : ExitCode.BadData;
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
            world.Output.Message(problem.ToString());
        }

        return (words, File.Exists(path) ? ExitCode.BadData : ExitCode.NoInput);
    }

    // A plan of a file is in no records: there is nobody to ask and nothing to write down.
    private static string? Noted((Paper Paper, PaperOrder Order, PlanAtHand At) made, OpenRecords? records) => records?.Trail.Note(new AuditNote(
        made.Paper.Noted,
        made.At.Case.Code.Text,
        RecordKind.Plan,
        new RevisionRef(made.At.Standing.Plan.Revision, made.At.Standing.Plan.Hash),
        $"{made.Paper.Name} {made.Paper.Beside(made.Order)}".TrimEnd()));

    private PaperOrder Order(PlanAtHand at, HomeWords words, int week, ParseResult line, OpenRecords? records) => new()
    {
        Patient = at.Case,
        Plan = at.Plan,
        Library = at.Library,
        Standing = at.Standing,
        ChainHead = at.ChainHead,
        Today = world.Input.Today,
        Week = week,
        Words = words,
        Clinic = Said(_clinic, line) ?? records?.Clinic?.PrintHeader,
        Contact = Said(_contact, line) ?? records?.Clinic?.PrintContact,
        OnLetter = IsPrinted && line.GetValue(_letter),
    };

    private static string WordOf(Paper paper) => paper.Name.Split(' ')[0];

    private string? Said(Option<string?> option, ParseResult line) => TakesHeader && line.GetValue(option) is { } said ? SafeText.OneLine(said) : null;

    private int Deliver(PaperMade made, (PaperFormat Format, string? File) to, ParseResult line, OpenRecords? records)
    {
        if (to.File is null)
        {
            return Print(made, to.Format);
        }

        PaperPlace place = PaperPlace.Of(world.Stores.Folder(line), records?.Clinic);
        (string? path, string? problem) = place.Put(to.File, made, to.Format, line.GetValue(_force), Directory.GetCurrentDirectory());
        world.Output.Message(problem is null ? $"progression {name}: written to {Found.Of(path!)}." : $"progression {name}: {problem}");
        return problem is null ? ExitCode.Good : ExitCode.CannotCreate;
    }

    private int Print(PaperMade made, PaperFormat format)
    {
        if (made.Text is null)
        {
            world.Output.Message($"progression {name}: {PaperFormats.Word(format)} is nothing to read on a terminal: --out names a file for it.");
            return ExitCode.Usage;
        }

        world.Output.Data(made.Text.TrimEnd());
        return ExitCode.Good;
    }
}
