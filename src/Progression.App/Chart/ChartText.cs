using Progression.App.Pictures;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Plots;
using Progression.Core.Quantities;

namespace Progression.App.Chart;

/// <summary>The chart in words and in numbers.</summary>
internal static class ChartText
{
    /// <summary>The legend of what can be seen, at most 80 columns.</summary>
    public static string LegendOf(ChartState state, ChartSubject subject)
    {
        List<string> parts = ["● measured" + (subject.Dots.Any(dot => dot.Low is not null) ? " │ error" : "")];
        if (subject.Forecast is { } forecast)
        {
            parts.Add("─ expected ▒ 8 in 10 ░ 9 in 10");
            if (forecast.Points.Any(point => point.BeyondPrior && point.Week <= state.LastWeek))
            {
                parts.Add("· beyond data");
            }
        }

        if (!subject.Goals.IsEmpty)
        {
            parts.Add("◇ goal");
        }

        return string.Join("  ", parts);
    }

    /// <summary>The measure with its unit and which way is better.</summary>
    public static string Heading(Measure measure) => $"{MeasureLabel.Name(measure)}; {MeasureLabel.Better(measure)}";

    /// <summary>What stands under the chart: the week under the cursor, then what the forecast rests on, then the milestones.</summary>
    public static IReadOnlyList<PictureRow> Pane(ChartState state, ChartSubject subject, int width)
    {
        List<PictureRow> lines = [.. TextLines.Wrapped(AtCursor(state, subject), width, Ink.Strong)];
        if (subject.Forecast is not { } forecast)
        {
            return [.. lines, .. TextLines.Wrapped($"No forecast: {subject.WhyNot}", width, Ink.Warning)];
        }

        if (forecast.Surprise is { IsOff: true } surprise)
        {
            lines.AddRange(TextLines.Wrapped($"! The newest reading is {surprise.Words}.", width, Ink.Warning));
        }

        lines.AddRange(TextLines.Labelled("Rests on", forecast.BasisWords, width));
        IEnumerable<MilestoneOutlook> coming = forecast.Milestones.OrderBy(outlook => outlook.Milestone.Week < state.Today).ThenBy(outlook => outlook.Milestone.Week);
        return [.. lines, .. coming.SelectMany(outlook => TextLines.Labelled(outlook.Milestone.Title, outlook.Words, width))];
    }

    /// <summary>The same as the chart in rows of numbers, a week each.</summary>
    public static IReadOnlyList<PictureRow> Numbers(ChartState state, ChartSubject subject, int width)
    {
        List<PictureRow> lines = [PictureRow.Of($"{"Week",-8}{"Measured",-22}{"Expected",-12}{"8 in 10",-14}{"9 in 10",-14}", Ink.Strong)];
        for (int week = 1; week <= state.LastWeek; week++)
        {
            lines.Add(PictureRow.Of($"{week,-8}{MeasuredIn(subject, week),-22}{Forecasts(subject, week)}".TrimEnd()));
        }

        return [.. lines, PictureRow.Empty, .. Pane(state, subject, width)];
    }

    /// <summary>Everything the chart rests on.</summary>
    public static IReadOnlyList<PictureRow> Why(ChartState state, ChartSubject subject, int width)
    {
        List<PictureRow> lines = [.. TextLines.Wrapped(Heading(subject.Measure), width, Ink.Strong), .. Pane(state, subject, width)];
        if (subject.Forecast is { } forecast)
        {
            ForecastPoint point = forecast.At(state.Week);
            lines.AddRange(TextLines.Labelled(
                $"Week {state.Week}", $"8 in 10 readings fall between {ForecastWords.Range(point, subject.Measure, (point.SeenLow80, point.SeenHigh80), " and ")}, with the error of the instrument.", width));
            lines.AddRange(Fell(forecast, width));
            lines.AddRange(TextLines.Labelled("Made on", $"{CaseTitle.Day(forecast.AsOf)} from {forecast.Readings} {(forecast.Readings == 1 ? "reading" : "readings")}, error {Number.Text(forecast.ErrorUsed)}{Scale(subject.Measure)}.", width));
            lines.AddRange(TextLines.Labelled("Source of the forecast", forecast.Source.ToString(), width));
            lines.AddRange(TextLines.Wrapped("Ranges are rounded outwards. A forecast never moves a phase by itself: measured criteria and the clinician do.", width, Ink.Quiet));
        }

        lines.AddRange(subject.Dots.SelectMany(dot => TextLines.Labelled(CaseTitle.Day(dot.On), Reading(dot, subject.Measure), width)));
        lines.AddRange(subject.Goals.SelectMany(goal =>
            TextLines.Labelled("Goal", $"{goal.Title}: {Number.Text(goal.Target!.Value, 1)} by week {Number.Text(goal.Week, 1)}; {goal.Source}", width)));
        return [.. lines, .. TextLines.Labelled("Source of the error", subject.Measure.Source.ToString(), width)];
    }

    private static IEnumerable<PictureRow> Fell(Forecast forecast, int width) => forecast.Surprise is { } surprise
        ? TextLines.Labelled("Newest reading", $"{surprise.Words}; {Number.Signed(surprise.Z, 1)} standard deviations from what was expected without it", width)
        : [];

    public static string AtCursor(ChartState state, ChartSubject subject)
    {
        string measured = MeasuredIn(subject, state.Week);
        string expected = subject.Forecast is { Points.IsEmpty: false } forecast ? $": {ForecastWords.Of(forecast.At(state.Week), subject.Measure)}"
            + (forecast.At(state.Week).BeyondPrior ? ", beyond the published data" : "") : "";
        return $"End of week {state.Week}{expected}{(measured.Length == 0 ? "" : $"; measured in that week: {measured}")}.";
    }

    private static string MeasuredIn(ChartSubject subject, int week) =>
        string.Join(", ", subject.Dots.Where(dot => Math.Floor(dot.Week) + 1 == week).Select(dot => $"{MeasureLabel.Value(subject.Measure, dot.Value)} on {CaseTitle.ShortDay(dot.On)}"));

    private static string Forecasts(ChartSubject subject, int week)
    {
        if (subject.Forecast is not { Points.IsEmpty: false } forecast)
        {
            return "";
        }

        ForecastPoint point = forecast.At(week);
        return $"{ForecastWords.Middle(point, subject.Measure),-12}{ForecastWords.Range(point, subject.Measure, (point.Low80, point.High80)),-14}"
            + $"{ForecastWords.Range(point, subject.Measure, (point.Low90, point.High90)),-14}{(point.BeyondPrior ? "beyond the data" : "")}";
    }

    private static string Reading(ChartDot dot, Measure measure) => dot is { Low: double low, High: double high }
        ? $"{MeasureLabel.Value(measure, dot.Value)}; the true value lies between {Number.Text(low, 1)} and {Number.Text(high, 1)} for 9 in 10 such readings"
        : $"{MeasureLabel.Value(measure, dot.Value)}; {(measure.Scale == ErrorScale.Ordinal ? "steps have no standard error" : "the error of this measure is not known")}";

    private static string Scale(Measure measure) => measure.Scale == ErrorScale.Logarithmic ? " of the logarithm" : MeasureLabel.Unit(measure);
}
