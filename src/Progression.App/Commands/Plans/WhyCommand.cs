using System.CommandLine;
using Progression.App.Grid;
using Progression.Core.Checks;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression why</c>: what a cell rests on.</summary>
internal sealed class WhyCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<string?> _week = new("--week") { Description = "The post-op week, from 1.", HelpName = "N", Required = true };
    private readonly Option<string?> _lane = new("--lane") { Description = "The lane: stim, flexion, quads-strength, pairing ...", HelpName = "LANE", Required = true };
    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("why", "Tells why a cell of a plan is as it is: inputs, rule, limits, source.", $"""
            Examples:
              progression why EXAMPLE-07 --week 3 --lane stim
              progression why case.yaml --week 2 --lane pairing --json

            JSON: schema "why/1" with heading, reasons, inputs, rule, limits, source, would_change and findings.
            {ExitCode.Help}
            """)
        { _what, _week, _lane, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (PlanAtHand? at, int code) = input.Take(line.GetRequiredValue(_what), "why", line);
        if (at is null)
        {
            return code;
        }

        GivenOptions given = new(line);
        int? week = given.Count(_week, at.Plan.Weeks);
        string lane = line.GetValue(_lane) ?? "";
        bool barred = !at.Plan.StimBarred.IsEmpty && lane is Lanes.Stim or Lanes.WithStim;
        if (at.Plan.LaneOf(lane) is null && !barred)
        {
            given.Problems.Add(new Problem("--lane", "The plan has no such lane.", string.Join(", ", at.Plan.Lanes.Select(one => one.Id)), Found.Of(lane)));
        }

        if (given.Problems.Count > 0 || week is null)
        {
            output.Problems("why", given.Problems);
            return ExitCode.Usage;
        }

        Explanation why = Why.Of(at.Case, at.Plan, at.Library, PlanCheck.Check(at.Case, at.Plan, at.Library), new CellAddress(lane, week.Value));
        if (line.GetValue(_json))
        {
            output.Json(PlanAnswers.Why(why));
        }
        else
        {
            output.Data(string.Join('\n', AnswerText.Lines(why, PlanText.AnswerWidth).Select(row => row.Text)));
        }

        return ExitCode.Good;
    }
}
