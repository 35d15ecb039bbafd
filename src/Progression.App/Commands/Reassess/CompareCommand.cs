using System.CommandLine;
using Progression.App.Commands.Plans;
using Progression.App.Grid;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.App.Commands.Reassess;

/// <summary><c>progression compare</c>: all measures of a case over all visits, and what can be said of their changes.</summary>
internal sealed class CompareCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<bool> _json = new("--json") { Description = "Print the answer as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("compare", "Tells what changed between visits, against the error of measurement.", $"""
            Examples:
              progression compare EXAMPLE-07
              progression compare case.yaml --json

            Changes are told since the operation; what was measured before it stands beside them.
            JSON: schema "compare/1" with code, level_percent, visits, pre_op, measures and false_alarm.
            {ExitCode.Help}
            """)
        { _what, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        ((Case Case, ClinicalLibrary Library)? at, int code) = input.TakeCase(line.GetRequiredValue(_what), "compare", line);
        if (at is not { } found)
        {
            return code;
        }

        Comparison comparison = Comparison.Of(found.Case, found.Library);
        double level = found.Library.Limit(LimitIds.ChangeLevel).Value;
        if (line.GetValue(_json))
        {
            output.Json(CompareAnswer.Of(found.Case, comparison, level));
        }
        else
        {
            output.Data(CompareText.Of(found.Case, comparison, level, PlanText.AnswerWidth));
        }

        return ExitCode.Good;
    }
}
