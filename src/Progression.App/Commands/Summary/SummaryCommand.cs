using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Commands.Records;
using Progression.App.Figures;
using Progression.App.Papers;
using Progression.App.Stores;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Outcomes;
using Progression.Exchange.Csv;

namespace Progression.App.Commands.Summary;

/// <summary><c>progression summary</c>: the figures of a clinic over all its cases, in which no case can be told.</summary>
internal sealed class SummaryCommand(CommandOutput output, CliEnvironment environment, StorePlace stores, LibraryPlace libraries)
{
    private const string Name = "summary";

    private static readonly ImmutableArray<(string Word, FiguresGroups Value)> Groupings = [("regimen", FiguresGroups.Regimen), ("year", FiguresGroups.Year)];

    private readonly Option<string?> _by = new("--by") { Description = "Groups beside all cases: regimen, or year of the operation. Default: none.", HelpName = "WHAT" };
    private readonly Option<string?> _goal = new("--goal") { Description = $"With --plot: lag-closed, or the id of a milestone. Default: {OutcomeGoal.LagClosed}.", HelpName = "ID" };
    private readonly Option<string?> _plot = new("--plot") { Description = "Draw how many had reached a goal by which week: a file that ends in .svg or .png.", HelpName = "FILE" };
    private readonly Option<bool> _force = new("--force") { Description = "With --plot: a file of that name may be written over." };
    private readonly Option<bool> _csv = new("--csv") { Description = "Print a table for a spreadsheet." };
    private readonly Option<bool> _json = new("--json") { Description = "Print the figures as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new(Name, "Tells the clinic's figures: weeks to closing the lag and to each milestone, adherence, stim delivered, how forecasts held.", $"""
            Examples:
              progression summary
              progression summary --by regimen --csv > figures.csv
              progression summary --goal flexion-week-6 --plot flexion.svg

            What rests on fewer people than the library's limit {LimitIds.SummaryLeast} (5 as shipped) is not told; nor is a larger group whose figure would let it be
            reckoned from that of all. For supervisors and the lead of a clinic. Reading takes a while with many cases; Ctrl+C breaks it off with exit code 130.
            JSON: schema "summary/1". CSV: a row for each figure.
            {ExitCode.Help}
            """)
        { _by, _goal, _plot, _force, _csv, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read(Name, line);
        if (library is null)
        {
            return code;
        }

        OutcomeYardstick by = OutcomeYardstick.Of(library, DateOnly.FromDateTime(environment.Clock.GetLocalNow().DateTime));
        GivenOptions given = new(line);
        FiguresGroups grouping = given.Word(_by, Groupings) ?? FiguresGroups.None;
        int goal = given.Word(_goal, [.. by.Goals.Select((one, index) => (one.Id, index))]) ?? 0;
        PaperFormat? format = line.GetValue(_plot) is { } file ? PaperFormats.Of(file) : null;
        if (line.GetValue(_plot) is { } wrong && format is not (PaperFormat.Svg or PaperFormat.Png))
        {
            given.Problems.Add(new Problem(_plot.Name, "The picture has no format.", "a file that ends in .svg or .png", Found.Of(wrong)));
        }

        if (line.GetValue(_csv) && line.GetValue(_json))
        {
            given.Problems.Add(new Problem(_csv.Name, "It is printed one way.", "--csv or --json", "both"));
        }

        if (given.Problems.Count > 0)
        {
            output.Problems(Name, given.Problems);
            return ExitCode.Usage;
        }

        using BreakOff breaking = new(stores.Progress());
        try
        {
            return Summarise(line, by, (grouping, goal, format), breaking);
        }
        catch (OperationCanceledException)
        {
            output.Message($"progression {Name}: It was broken off; nothing was printed.");
            return ExitCode.BrokenOff;
        }
    }

    private int Summarise(ParseResult line, OutcomeYardstick by, (FiguresGroups Groups, int Goal, PaperFormat? Format) asked, BreakOff breaking)
    {
        string folder = stores.Folder(line);
        if (!Directory.Exists(folder))
        {
            output.Message($"progression {Name}: there are no records in {Found.Of(folder)}.");
            return ExitCode.NoInput;
        }

        OpenRecords records = stores.Records(folder, notice => output.Message($"progression: {notice.Text}"), breaking);
        (ImmutableArray<CaseOutcome> cases, int unreadable, string? unnoted) =
            records.Book.Figures(opened => CaseOutcome.Of(opened.Case, opened.Plan, opened.Forecasts, by), breaking);
        ClinicSummary summary = ClinicSummary.Of(cases, by, asked.Groups.Of());
        foreach (string told in new[] { unnoted, unreadable > 0 ? $"{unreadable} cases could not be read and are in no figure; opening one tells why." : null }.OfType<string>())
        {
            output.Message($"progression {Name}: {told}");
        }

        Print(summary, line);
        return asked.Format is { } format ? Draw(summary, (asked.Goal, format), line, records) : ExitCode.Good;
    }

    private void Print(ClinicSummary summary, ParseResult line)
    {
        if (line.GetValue(_json))
        {
            output.Json(SummaryAnswer.Of(summary));
        }
        else
        {
            output.Data(line.GetValue(_csv) ? OutcomesCsv.Of(summary).TrimEnd() : string.Join('\n', new FiguresText(summary, FiguresText.WholeWidth).Lines()));
        }
    }

    private int Draw(ClinicSummary summary, (int Goal, PaperFormat Format) asked, ParseResult line, OpenRecords records)
    {
        if (summary.Groups[0].Waits[asked.Goal] is not { } figures)
        {
            output.Message($"progression {Name}: {FiguresText.Withheld(summary)} No picture was made.");
            return ExitCode.Good;
        }

        PaperMade made = FiguresCurve.Made(figures, summary, asked.Format);
        (string? path, string? problem) = PaperPlace.Of(stores.Folder(line), records.Clinic)
            .Put(line.GetValue(_plot)!, made, asked.Format, line.GetValue(_force), Directory.GetCurrentDirectory());
        output.Message($"progression {Name}: {(problem is null ? $"written to {Found.Of(path!)}." : problem)}");
        return problem is null ? ExitCode.Good : ExitCode.CannotCreate;
    }
}
