using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.Core.Outcomes;

/// <summary>A summary as rows, a figure each.</summary>
public static class OutcomeRows
{
    private static readonly ImmutableArray<double> Weeks = [1, 2, 3, 4, 6, 8, 12, 26];

    private const string Interval = "interval 95 %";
    private const string Spread = "quartiles";

    /// <summary>The rows.</summary>
    public static IEnumerable<OutcomeRow> Of(ClinicSummary summary)
    {
        ArgumentNullException.ThrowIfNull(summary);
        return summary.Groups.SelectMany(group => Rows(group, summary));
    }

    private static IEnumerable<OutcomeRow> Rows(OutcomeGroup group, ClinicSummary summary)
    {
        yield return new OutcomeRow(group.Name, "cases", "cases", "Cases", "1") { People = group.Cases, Value = group.Cases, IsWithheld = group.Cases is null };
        foreach ((OutcomeGoal goal, WaitFigures? wait) in summary.Goals.Zip(group.Waits))
        {
            yield return Of(group.Name, goal, wait);
            foreach (OutcomeRow row in wait is null ? [] : Weeks.Select(week => Reached(group.Name, wait, week)).OfType<OutcomeRow>())
            {
                yield return row;
            }
        }

        foreach (OutcomeRow row in Adherence(group).Concat(Delivered(group)).Append(Forecasts(group)))
        {
            yield return row;
        }
    }

    private static OutcomeRow Of(string group, OutcomeGoal goal, WaitFigures? wait) => new(group, "wait", goal.Id, goal.Title, "wk")
    {
        People = wait?.People,
        Events = wait?.Events,
        Value = wait?.Curve.Median,
        Low = wait?.Curve.MedianLow,
        High = wait?.Curve.MedianHigh,
        Range = Interval,
        IsWithheld = wait is null,
    };

    private static OutcomeRow? Reached(string group, WaitFigures wait, double week) => wait.ReachedBy(week) is not { } reached ? null
        : new(group, "reached", $"{wait.Goal.Id}@{Number.Text(week)}", $"{wait.Goal.Title}, reached by week {Number.Text(week)}", "%")
        {
            People = wait.People,
            Value = 100 * reached.Share,
            Low = 100 * reached.Interval?.Low,
            High = 100 * reached.Interval?.High,
            Range = Interval,
        };

    private static IEnumerable<OutcomeRow> Adherence(OutcomeGroup group)
    {
        AdherenceFigures? figures = group.Adherence;
        OutcomeRow Row(string id, string title, double? value) =>
            new(group.Name, "adherence", id, title, "%") { People = figures?.People, Value = value, IsWithheld = figures is null };
        yield return Row("sessions", "Stim sessions done of those planned in logged weeks, all together", figures?.StimSessions.Percent);
        yield return Row("sessions-at-least", "The same with weeks without a log as nothing done", figures?.StimSessions.PercentAtLeast);
        yield return Row("contractions", "Stimulated contractions done of those planned in logged weeks", figures?.Contractions.Percent);
        yield return Row("each-sessions", "Stim sessions done of those planned, each person", null).With(figures?.EachSessions);
        yield return Row("home-work", "Home work done, as each person says", null).With(figures?.HomeWork);
    }

    private static IEnumerable<OutcomeRow> Delivered(OutcomeGroup group)
    {
        DeliveredFigures? figures = group.Delivered;
        OutcomeRow Row(string id, string title, string unit, Quartiles? spread) =>
            new OutcomeRow(group.Name, "stim", id, title, unit) { People = figures?.People, IsWithheld = figures is null }.With(spread);
        yield return Row("sessions", "Stim sessions logged, each person", "1", figures?.Sessions);
        yield return Row("contractions", "Stimulated contractions logged, each person", "1", figures?.Contractions);
        yield return Row("minutes", "Minutes of stim by the clock, each person", "min", figures?.Minutes);
    }

    private static OutcomeRow Forecasts(OutcomeGroup group)
    {
        ForecastFigures? figures = group.Forecasts;
        (double Low, double High)? interval = figures?.Share.Interval();
        return new(group.Name, "forecast", "hit-rate", $"Readings in the 80 % band of the forecast before them{(figures is null ? "" : $", of {figures.Rate.Scored.ToString(CultureInfo.InvariantCulture)}")}", "%")
        {
            People = figures?.People,
            Events = figures?.Rate.Hits,
            Value = 100 * figures?.Share.Share,
            Low = 100 * interval?.Low,
            High = 100 * interval?.High,
            Range = Interval,
            IsWithheld = figures is null,
        };
    }

    private static OutcomeRow With(this OutcomeRow row, Quartiles? spread) => row with { Value = spread?.Median, Low = spread?.Lower, High = spread?.Upper, Range = Spread };
}
