using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Checks;

/// <summary>What to expect of the measure of a milestone lane in a week that lies ahead, as inputs of the answer.</summary>
internal static class WhyExpected
{
    private const int MostMilestones = 2;

    /// <summary>The range, what it rests on and the outlook of the lane's next milestones; empty for a week that is past or a lane without a forecast.</summary>
    internal static ImmutableArray<Input> Inputs(Case patient, ClinicalLibrary library, (Lane Lane, int Week) at)
    {
        if (at.Lane.Measure is not { } measure || patient.Assessments.IsEmpty || PostOpWeek.Of(patient.Operation.Date, patient.Assessments[^1].Date) > at.Week)
        {
            return [];
        }

        ForecastAnswer answer = Forecasting.Of(patient, library, measure, patient.Assessments[^1].Date);
        return answer.Forecast is not { } forecast
            ? [new Input("To expect", answer.WhyNot ?? "no forecast")]
            : [
                new Input($"To expect by the end of week {at.Week}", $"{ForecastWords.Of(forecast.At(at.Week), forecast.Measure)}{(forecast.At(at.Week).BeyondPrior ? "; beyond the weeks the forecast is founded on" : "")}"),
                .. forecast.Milestones.Where(outlook => outlook.Milestone.Week >= at.Week).Take(MostMilestones).Select(outlook => new Input($"{outlook.Milestone.Title}, due in week {Quantities.Number.Text(outlook.Milestone.Week)}", outlook.Words)),
                new Input("The forecast rests on", $"{forecast.BasisWords} [{forecast.Source.StandingWords}]"),
            ];
    }
}
