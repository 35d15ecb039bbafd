using System.CommandLine;
using Progression.App.Grid;
using Progression.Core.Checks;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Records.Caseload;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression draft</c>: a whole plan from a case file, printed with its findings, saved when asked to.</summary>
internal sealed class DraftCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private const int MostWidth = 400;

    private readonly Argument<string> _file = new("file") { Description = "A case file; \"progression example\" prints one.", HelpName = "FILE" };
    private readonly Option<string?> _weeks = new("--weeks") { Description = $"Weeks of the plan, 1 to {PostOpWeek.Longest}. Default: the file's, else {DraftOrder.DefaultWeeks}.", HelpName = "N" };
    private readonly Option<string?> _regimen = new("--regimen") { Description = "The stim regimen. Default: the file's, else the library's.", HelpName = "ID" };
    private readonly Option<string?> _width = new("--width") { Description = $"Columns of the text grid, {GridText.Narrowest} to {MostWidth}. Default: {PlanText.UsualWidth}.", HelpName = "N" };
    private readonly Option<bool> _save = new("--save") { Description = "Save the case and the plan. Over a saved plan, past weeks and pinned cells stay." };
    private readonly Option<bool> _json = new("--json") { Description = "Print plan, figures and findings as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("draft", "Drafts a plan from a case file.", $"""
            Examples:
              progression example > case.yaml
              progression draft case.yaml
              progression draft case.yaml --weeks 8 --regimen strong-15-twice-daily --save

            JSON: schema "draft/1" with caution, plan (schema "plan/1"), figures (a week each), findings.
            {ExitCode.Help}
            """)
        { _file, _weeks, _regimen, _width, _save, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (ClinicalLibrary? library, int code) = libraries.Read("draft", line);
        if (library is null)
        {
            return code;
        }

        GivenOptions given = new(line);
        DraftOrder order = new()
        {
            Weeks = given.Count(_weeks, PostOpWeek.Longest),
            Regimen = given.Take(_regimen, (field, text) => RegimenText.Read(field, text, library))?.Id,
        };
        int width = Width(given);
        if (given.Problems.Count > 0)
        {
            output.Problems("draft", given.Problems);
            return ExitCode.Usage;
        }

        (PlanAtHand? at, code) = input.FromFile(line.GetRequiredValue(_file), "draft", library, order);
        return at is null ? code : Answer(at, line, order, width);
    }

    private int Width(GivenOptions given)
    {
        int width = given.Count(_width, MostWidth) ?? PlanText.UsualWidth;
        if (width < GridText.Narrowest)
        {
            given.Problems.Add(new Problem("--width", "The grid needs more columns.", $"{GridText.Narrowest} to {MostWidth} columns", $"{width}"));
        }

        return width;
    }

    private int Answer(PlanAtHand drafted, ParseResult line, DraftOrder order, int width)
    {
        (PlanAtHand? at, int code) = line.GetValue(_save) ? Save(drafted, stores.Folder(line), order) : (drafted, ExitCode.Good);
        if (at is null)
        {
            return code;
        }

        if (line.GetValue(_json))
        {
            output.Json(PlanAnswers.Draft(at, PlanCheck.Check(at.Case, at.Plan, at.Library)));
        }
        else
        {
            output.Data(PlanText.Of(input.Desk(at), at.Plan, width, at.Mark));
        }

        return code;
    }

    /// <summary>Saves over what stands, keeping what is done and pinned; gives the plan that was meant to be saved, or null where it cannot be meant.</summary>
    private (PlanAtHand?, int) Save(PlanAtHand at, string folder, DraftOrder order)
    {
        CaseBook book = stores.Open(folder);
        OpenedCase? standing = book.Again(at.Case.Code);
        if (standing is not null && OtherOperation(standing.Case, at.Case) is { } problem)
        {
            output.Problems("draft", [problem]);
            return (null, ExitCode.BadData);
        }

        PlanAtHand saved = at;
        if (standing?.Plan is { } before)
        {
            Entered<PlanRevision> again = Redraft.Of(before, at.Case, at.Library, order);
            if (again.Value is not { } plan)
            {
                output.Problems("draft", again.Problems);
                return (null, ExitCode.BadData);
            }

            saved = at with { Plan = plan };
        }

        switch (book.Save(saved.Case, saved.Plan, standing))
        {
            case SaveResult.Saved done:
                output.Message($"Saved {at.Case.Code}, plan revision {done.Plan.Revision}. Open it with: progression open {at.Case.Code}");
                return (saved with { Standing = ReviewStanding.Of(new(done.Plan.Revision, done.Plan.Hash), standing?.Review ?? ReviewRecord.Empty) }, ExitCode.Good);
            case SaveResult.NotSaved refused:
                output.Message($"progression draft: not saved. {refused.Why}");
                return (saved, StorePlace.CodeOf(refused.Kind));
            default:
                throw new InvalidOperationException("A save has two outcomes.");
        }
    }

    /// <summary>A code stands for one knee and one operation: another day would shift every week of the saved plan. Null when both are the same.</summary>
    private static Problem? OtherOperation(Case saved, Case file)
    {
        const string advice = "Nothing was saved. Another operation needs another code.";
        (Operation old, Operation now) = (saved.Operation, file.Operation);
        return old.Date != now.Date
                ? new Problem("operation.date", $"{saved.Code} is saved with another operation day, and its weeks are counted from that day. {advice}", $"{old.Date:yyyy-MM-dd}", $"{now.Date:yyyy-MM-dd}")
            : old.Side != now.Side
                ? new Problem("operation.side", $"{saved.Code} is saved as the other knee. {advice}", Word(old.Side), Word(now.Side))
            : null;
    }

    private static string Word(Side side) => side.ToString().ToLowerInvariant();
}
