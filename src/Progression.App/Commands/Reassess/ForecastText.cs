using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Grid;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Commands.Reassess;

/// <summary>A forecast as lines of text, in whole weeks and in steps that its error allows.</summary>
internal static class ForecastText
{
    /// <summary>The caution under every forecast.</summary>
    internal const string Caution =
        "What usually follows under usual care, not the effect of a stim dose, and no promise. It never moves a phase. " + PlanText.Caution;

    private static readonly ImmutableArray<double> Weeks = [1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 26];

    internal static string Of(Case patient, ForecastAnswer answer) => answer.Forecast is not { } forecast
        ? $"No forecast for {patient.Code}. {answer.WhyNot}"
        : string.Join('\n', [.. Head(patient, forecast), "", .. Table(patient, forecast), "", .. Milestones(forecast), .. Wrapped(Caution)]);

    private static IEnumerable<string> Head(Case patient, Forecast forecast)
    {
        string unit = Unit(forecast);
        yield return $"{forecast.Measure.Title}{(unit == "" ? "" : $" ({unit})")}, {patient.Code}, from what was known on {forecast.AsOf.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}";
        foreach (string row in Wrapped($"Basis: {forecast.BasisWords}. {forecast.Source}"))
        {
            yield return row;
        }

        if (!forecast.Measured.IsEmpty)
        {
            yield return "Measured: " + string.Join(", ", forecast.Measured.Select(one => $"{Number.Text(one.Value, 1)} in week {Number.Text(one.Week, 1)}"));
        }

        if (forecast.Surprise is { } surprise)
        {
            yield return $"Last reading: {surprise.Words} (z {Number.Signed(surprise.Z, 1)}).";
        }
    }

    private static IEnumerable<string> Table(Case patient, Forecast forecast)
    {
        double now = PostOpWeek.DayOf(patient.Operation.Date, forecast.AsOf) / 7.0;
        ImmutableArray<MilestoneOutlook> ahead = [.. forecast.Milestones.Where(one => one.Milestone.Week >= now)];
        yield return "week  median  8 in 10      9 in 10      milestone";
        foreach (double week in Weeks.Union(ahead.Select(one => one.Milestone.Week)).Where(week => week >= Math.Floor(now)).Order())
        {
            ForecastPoint at = forecast.At(week);
            string goals = string.Join("; ", ahead.Where(one => one.Milestone.Week == week).Select(one => Goal(one, forecast)));
            string row = $"{Number.Text(week, 1),4}  {ForecastWords.Middle(at, forecast.Measure),6}  {Band(at, (at.Low80, at.High80), forecast),-11}  {Band(at, (at.Low90, at.High90), forecast),-11}  {goals}";
            yield return row.TrimEnd() + (at.BeyondPrior ? "  *" : "");
        }

        yield return "* beyond the weeks that the basis reaches to. Bands are of the true value; a reading differs from it by its error.";
    }

    private static IEnumerable<string> Milestones(Forecast forecast)
    {
        foreach (MilestoneOutlook one in forecast.Milestones)
        {
            yield return $"{one.Milestone.Title}: {one.Words}.";
        }

        if (!forecast.Milestones.IsEmpty)
        {
            yield return "Chances are of the true value; passing once is not holding.";
            yield return "";
        }
    }

    private static string Goal(MilestoneOutlook one, Forecast forecast)
    {
        string than = forecast.Measure.Better == Direction.HigherIsBetter ? "at least" : "at most";
        return $"{than} {Number.Text(one.Milestone.Target!.Value, 1)}: {one.Words.Split(" by ")[0]}";
    }

    private static string Band(ForecastPoint at, (double Low, double High) range, Forecast forecast) => ForecastWords.Range(at, forecast.Measure, range, " to ");

    private static string Unit(Forecast forecast) => forecast.Measure.Unit == "1" ? "" : forecast.Measure.Unit;

    private static IEnumerable<string> Wrapped(string text) => PlanText.Wrapped(text, PlanText.AnswerWidth);
}
