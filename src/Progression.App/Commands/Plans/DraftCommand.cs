using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Progression.App.Grid;
using Progression.Core.Checks;
using Progression.Core.Drafting;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Records.Caseload;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression draft</c>: a whole plan from a case file, printed with its findings, saved when asked to.</summary>
internal sealed class DraftCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private readonly Argument<string> _file = new("file") { Description = "A case file; \"progression example\" prints one.", HelpName = "FILE" };
    private readonly Option<string?> _weeks = new("--weeks") { Description = $"Weeks of the plan, 1 to {PostOpWeek.Longest}. Default: the file's, else {DraftOrder.DefaultWeeks}.", HelpName = "N" };
    private readonly Option<string?> _regimen = new("--regimen") { Description = "The stim regimen. Default: the file's, else the library's.", HelpName = "ID" };
    private readonly Option<string?> _width = new("--width") { Description = $"Columns of the text grid, {GridText.Narrowest} to 400. Default: {PlanAnswers.UsualWidth}.", HelpName = "N" };
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
        GivenOptions given = new(line);
        DraftOrder order = new() { Weeks = given.Count(_weeks, PostOpWeek.Longest), Regimen = line.GetValue(_regimen) };
        int width = given.Count(_width, 400) ?? PlanAnswers.UsualWidth;
        if (given.Problems.Count > 0 || width < GridText.Narrowest)
        {
            output.Problems("draft", width < GridText.Narrowest
                ? [.. given.Problems, new("--width", "The grid needs more columns.", $"{GridText.Narrowest} to 400 columns", width.ToString(CultureInfo.InvariantCulture))]
                : given.Problems);
            return ExitCode.Usage;
        }

        (ClinicalLibrary? library, int code) = libraries.Read("draft", line);
        if (library is null)
        {
            return code;
        }

        (PlanAtHand? at, code) = input.FromFile(line.GetRequiredValue(_file), "draft", library, order);
        return at is null ? code : Answer(at, line, width);
    }

    private int Answer(PlanAtHand at, ParseResult line, int width)
    {
        int code = ExitCode.Good;
        if (line.GetValue(_save))
        {
            (at, code) = Save(at, stores.Folder(line));
        }

        ImmutableArray<Finding> findings = PlanCheck.Check(at.Case, at.Plan, at.Library);
        if (line.GetValue(_json))
        {
            output.Json(PlanAnswers.Draft(at, findings));
        }
        else
        {
            output.Data(PlanAnswers.Plan(at, findings, width, input.Today));
        }

        return code;
    }

    /// <summary>Saves over what stands, keeping what is done and pinned; gives the plan that was meant to be saved.</summary>
    private (PlanAtHand, int) Save(PlanAtHand at, string folder)
    {
        CaseBook book = stores.Open(folder);
        OpenedCase? standing = book.Open(at.Case.Code);
        PlanRevision plan = standing?.Plan is { } before && before.Operation == at.Plan.Operation ? Redraft.Over(before, at.Plan) : at.Plan;
        PlanAtHand saved = at with { Plan = plan };
        switch (book.Save(at.Case, plan, standing))
        {
            case SaveResult.Saved done:
                output.Message($"Saved {at.Case.Code}, plan revision {done.Plan.Revision}. Open it with: progression open {at.Case.Code}");
                return (saved, ExitCode.Good);
            case SaveResult.NotSaved refused:
                output.Message($"progression draft: not saved. {refused.Why}");
                return (saved, StorePlace.CodeOf(refused.Kind));
            default:
                throw new InvalidOperationException("A save has two outcomes.");
        }
    }
}
