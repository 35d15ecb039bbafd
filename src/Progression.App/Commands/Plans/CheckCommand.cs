using System.Collections.Immutable;
using System.CommandLine;
using Progression.App.Grid;
using Progression.Core.Checks;
using Progression.Core.Findings;
using Progression.Core.Reviews;

namespace Progression.App.Commands.Plans;

/// <summary><c>progression check</c>: the findings on a plan; the exit code tells the worst.</summary>
internal sealed class CheckCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<bool> _json = new("--json") { Description = "Print the findings as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("check", "Checks the plan of a case file or a saved case.", $"""
            A case file is drafted first, and nothing is saved.

            Examples:
              progression check case.yaml
              progression check EXAMPLE-07 --json

            JSON: schema "findings/1" with code, worst (null, note, warning, severe or stop) and findings.
            {ExitCode.Help}
            """)
        { _what, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        (PlanAtHand? at, int code) = input.Take(line.GetRequiredValue(_what), "check", line);
        if (at is null)
        {
            return code;
        }

        ImmutableArray<Finding> findings = PlanCheck.Check(at.Case, at.Plan, at.Library);
        if (line.GetValue(_json))
        {
            output.Json(PlanAnswers.Findings(at, findings));
        }
        else
        {
            output.Data($"{SignatureWords.Of(at.Standing)}.\n{PlanText.Of(findings, PlanText.AnswerWidth)}");
        }

        return PlanCheck.Worst(findings) switch
        {
            Severity.Stop => ExitCode.SafetyStop,
            Severity.Severe => ExitCode.Severe,
            Severity.Warning => ExitCode.Warning,
            _ => ExitCode.Good,
        };
    }
}
