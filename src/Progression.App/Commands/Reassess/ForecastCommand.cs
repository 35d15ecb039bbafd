using System.CommandLine;
using Progression.App.Commands.Plans;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.App.Commands.Reassess;

/// <summary><c>progression forecast</c>: what usually follows for a measure, given the person's readings.</summary>
internal sealed class ForecastCommand(CommandOutput output, PlanInput input, StorePlace stores, LibraryPlace libraries)
{
    private readonly Argument<string> _what = PlanInput.FileOrCode();
    private readonly Option<string?> _measure = new("--measure") { Description = MeasureWords.Help, HelpName = "MEASURE", Required = true };
    private readonly Option<bool> _json = new("--json") { Description = "Print the forecast as JSON." };

    internal Command Build()
    {
        ExampledCommand command = new("forecast", "Tells what usually follows for a measure, with its range, given the person's readings.", $"""
            It is a range and a chance, never a promise: what usually follows under usual care, not the effect of a stim dose.
            Nothing is told while a red flag is open, nor from fewer than three readings where no course is published.

            Examples:
              progression forecast EXAMPLE-07 --measure knee-flexion
              progression forecast case.yaml --measure extension_lag --json

            JSON: schema "forecast/1" with the basis, the readings, a point for every half week, milestones with their chances.
            {ExitCode.Help}
            """)
        { _what, _measure, _json, stores.Option, libraries.Option };
        command.SetAction(Run);
        return command;
    }

    private int Run(ParseResult line)
    {
        ((Case Case, ClinicalLibrary Library)? at, int code) = input.TakeCase(line.GetRequiredValue(_what), "forecast", line);
        if (at is not ({ } patient, { } library))
        {
            return code;
        }

        Entered<Measure> measure = MeasureWords.Read(_measure.Name, line.GetValue(_measure), library);
        if (measure.Value is null)
        {
            output.Problems("forecast", measure.Problems);
            return ExitCode.Usage;
        }

        DateOnly asOf = patient.Assessments.IsEmpty ? patient.Operation.Date : patient.Assessments[^1].Date;
        ForecastAnswer answer = Forecasting.Of(patient, library, measure.Value.Id, asOf);
        if (line.GetValue(_json))
        {
            output.Json(ForecastAnswers.Json(patient, measure.Value, answer));
        }
        else
        {
            output.Data(ForecastText.Of(patient, answer));
        }

        return ExitCode.Good;
    }
}
