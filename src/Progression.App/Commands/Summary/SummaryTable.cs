using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Outcomes;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.App.Commands.Summary;

/// <summary>A summary as rows, a figure each.</summary>
internal static class SummaryTable
{
    /// <summary>The weeks at which the share that has reached a goal is told.</summary>
    private static readonly ImmutableArray<double> Weeks = [1, 2, 3, 4, 6, 8, 12, 26];

    private const string Interval = "interval 95 %";
    private const string Spread = "quartiles";
    private static readonly string[] Columns = ["group", "what", "id", "title", "unit", "people", "events", "value", "low", "high", "range", "withheld"];

    /// <summary>The rows.</summary>
    internal static IEnumerable<SummaryRow> Rows(ClinicSummary summary) => summary.Groups.SelectMany(group => Rows(group, summary));

    /// <summary>The rows as comma-separated values (RFC 4180).</summary>
    internal static string Csv(ClinicSummary summary) =>
        string.Join('\n', Rows(summary).Select(Cells).Prepend(Columns).Select(row => string.Join(',', row.Select(Quoted))));

    private static IEnumerable<SummaryRow> Rows(OutcomeGroup group, ClinicSummary summary)
    {
        yield return new SummaryRow(group.Name, "cases", "cases", "Cases", "1") { People = group.Cases, Value = group.Cases, IsWithheld = group.Cases is null };
        foreach ((OutcomeGoal goal, WaitFigures? wait) in summary.Goals.Zip(group.Waits))
        {
            yield return Of(group.Name, goal, wait);
            foreach (SummaryRow row in wait is null ? [] : Weeks.Select(week => Reached(group.Name, wait, week)).OfType<SummaryRow>())
            {
                yield return row;
            }
        }

        foreach (SummaryRow row in Adherence(group).Concat(Delivered(group)).Append(Forecasts(group)))
        {
            yield return row;
        }
    }

    private static SummaryRow Of(string group, OutcomeGoal goal, WaitFigures? wait) => new(group, "wait", goal.Id, goal.Title, "wk")
    {
        People = wait?.People,
        Events = wait?.Events,
        Value = wait?.Curve.Median,
        Low = wait?.Curve.MedianLow,
        High = wait?.Curve.MedianHigh,
        Range = Interval,
        IsWithheld = wait is null,
    };

    private static SummaryRow? Reached(string group, WaitFigures wait, double week) => wait.ReachedBy(week) is not { } reached ? null
        : new(group, "reached", $"{wait.Goal.Id}@{Number.Text(week)}", $"{wait.Goal.Title}, reached by week {Number.Text(week)}", "%")
        {
            People = wait.People,
            Value = 100 * reached.Share,
            Low = 100 * reached.Interval?.Low,
            High = 100 * reached.Interval?.High,
            Range = Interval,
        };

    private static IEnumerable<SummaryRow> Adherence(OutcomeGroup group)
    {
        AdherenceFigures? figures = group.Adherence;
        SummaryRow Row(string id, string title, double? value) =>
            new(group.Name, "adherence", id, title, "%") { People = figures?.People, Value = value, IsWithheld = figures is null };
        yield return Row("sessions", "Stim sessions done of those planned in logged weeks, all together", figures?.StimSessions.Percent);
        yield return Row("sessions-at-least", "The same with weeks without a log as nothing done", figures?.StimSessions.PercentAtLeast);
        yield return Row("contractions", "Stimulated contractions done of those planned in logged weeks", figures?.Contractions.Percent);
        yield return Row("each-sessions", "Stim sessions done of those planned, each person", null).With(figures?.EachSessions);
        yield return Row("home-work", "Home work done, as each person says", null).With(figures?.HomeWork);
    }

    private static IEnumerable<SummaryRow> Delivered(OutcomeGroup group)
    {
        DeliveredFigures? figures = group.Delivered;
        SummaryRow Row(string id, string title, string unit, Quartiles? spread) =>
            new SummaryRow(group.Name, "stim", id, title, unit) { People = figures?.People, IsWithheld = figures is null }.With(spread);
        yield return Row("sessions", "Stim sessions logged, each person", "1", figures?.Sessions);
        yield return Row("contractions", "Stimulated contractions logged, each person", "1", figures?.Contractions);
        yield return Row("minutes", "Minutes of stim by the clock, each person", "min", figures?.Minutes);
    }

    private static SummaryRow Forecasts(OutcomeGroup group)
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

    private static SummaryRow With(this SummaryRow row, Quartiles? spread) => row with { Value = spread?.Median, Low = spread?.Lower, High = spread?.Upper, Range = Spread };

    private static string[] Cells(SummaryRow row) =>
    [
        row.Group, row.What, row.Id, row.Title, row.Unit, Text(row.People), Text(row.Events), Text(row.Value), Text(row.Low), Text(row.High), row.Range, row.IsWithheld ? "yes" : "no",
    ];

    private static string Text(double? value) => value is double known ? Number.Text(known) : "";

    // A cell that begins like a formula would be reckoned by a spreadsheet that opens the file.
    private static string Quoted(string cell)
    {
        string safe = SafeText.OneLine(cell);
        safe = safe.Length > 0 && "=+-@".Contains(safe[0], StringComparison.Ordinal) && !double.TryParse(safe, CultureInfo.InvariantCulture, out _) ? $"'{safe}" : safe;
        return safe.AsSpan().ContainsAny(",\"") ? $"\"{safe.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : safe;
    }
}
