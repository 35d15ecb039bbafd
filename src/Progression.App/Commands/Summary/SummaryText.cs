using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Grid;
using Progression.Core.Adherence;
using Progression.Core.Outcomes;
using Progression.Core.Plots;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.App.Commands.Summary;

/// <summary>A summary to be read.</summary>
internal static class SummaryText
{
    private const int Title = 36;

    private static readonly ImmutableArray<double> Weeks = [6, 12];

    internal static string Of(ClinicSummary summary) => string.Join('\n', [.. summary.Groups.SelectMany(group => Lines(group, summary)), .. Closing(summary)]);

    /// <summary>Why a figure is not told.</summary>
    internal static string Withheld(ClinicSummary summary) =>
        $"Not told: fewer than {summary.Least.Text} people are behind it, or behind a group that could be reckoned from it.";

    private static IEnumerable<string> Lines(OutcomeGroup group, ClinicSummary summary)
    {
        string day = summary.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        string name = group.Name == "all" ? $"All cases on {day}" : group.Name;
        if (group.Cases is not int cases)
        {
            return [$"{name}: {Withheld(summary)}", ""];
        }

        ImmutableArray<WaitFigures> waits = [.. group.Waits.OfType<WaitFigures>()];
        return
        [
            string.Create(CultureInfo.InvariantCulture, $"{name}: {cases:N0} cases"), "",
            $"{"Weeks from the operation to",-Title}  people  seen  {"median (95 %)",-20}  {string.Join("  ", Weeks.Select(week => $"{$"by week {Number.Text(week)} (95 %)",-18}"))}".TrimEnd(),
            .. waits.Select(Line),
            .. waits.Length < group.Waits.Length ? [$"{group.Waits.Length - waits.Length} more. {Withheld(summary)}"] : Array.Empty<string>(),
            .. waits.FirstOrDefault(wait => wait.Goal.Id == OutcomeGoal.LagClosed)?.GapWeeks is double gap ? [$"The lag closed before it was seen to: in the middle case the visit before, when it was open, was {Number.Text(gap, 1)} wk earlier."] : Array.Empty<string>(),
            "",
            .. Done(group, summary).SelectMany(text => PlanText.Wrapped(text, PlanText.AnswerWidth)),
            "",
        ];
    }

    private static string Line(WaitFigures wait)
    {
        KaplanMeier curve = wait.Curve;
        string median = curve.Median is double half ? $"{Number.Text(half, 1)} ({Open(curve.MedianLow)} to {Open(curve.MedianHigh)})" : $"over {Number.Text(curve.Steps[^1].Time, 0)}";
        string title = wait.Goal.Title.Split(", as ")[0].Split(" (")[0];
        title = title.Length > Title ? title[..(Title - 3)] + "..." : title;
        return $"{title,-Title}  {wait.People,6}  {wait.Events,4}  {median,-20}  {string.Join("  ", Weeks.Select(week => $"{Share(wait, week),-18}"))}".TrimEnd();
    }

    // Beyond what is told it can only have become more.
    private static string Share(WaitFigures wait, double week) => wait.ReachedBy(week) is not { } reached
        ? wait.Curve.Steps[^1].Waiting == 1 ? "not known" : $"at least {Percent(1 - wait.Curve.Steps[^1].Waiting)} %"
        : $"{Percent(reached.Share)} %{(reached.Interval is (double low, double high) ? $" ({Percent(low)} to {Percent(high)})" : "")}";

    private static IEnumerable<string> Done(OutcomeGroup group, ClinicSummary summary)
    {
        string withheld = Withheld(summary);
        yield return group.Adherence is not { } done ? $"Adherence. {withheld}"
            : $"Adherence of {done.People} people: {Of(done.StimSessions)} stim sessions, {Of(done.Contractions)} contractions"
                + $"{(done.EachSessions is { } each ? $"; each person's sessions {Spread(each, " %")}" : "")}{(done.HomeWork is { } home ? $"; home work {Spread(home, " %")}" : "")}.";
        yield return group.Delivered is not { } got ? $"Stim delivered. {withheld}"
            : $"Stim delivered to {got.People} people, each: {Spread(got.Sessions, "")} sessions, {Spread(got.Contractions, "")} contractions"
                + $"{(got.Minutes is { } minutes ? $", {Spread(minutes, " min")}" : "")}.";
        yield return group.Forecasts is not { } kept ? $"Forecasts. {withheld}"
            : $"Forecasts of {kept.People} people: {kept.Rate.Hits} of {kept.Rate.Scored} readings ({Percent(kept.Share.Share)} %, 95 % interval {Percent(kept.Share.Interval().Low)} to "
                + $"{Percent(kept.Share.Interval().High)}) fell into the 80 % band before them.{(kept.Rate.Warns ? $" That is under {Number.Text(kept.Rate.WarnsUnder!.Value)} %: look at measuring, and at the priors." : "")}";
    }

    private static string Of(DoneShare share) => share.Percent is double percent
        ? $"{Number.Text(percent, 0)} % (at least {Number.Text(share.PercentAtLeast!.Value, 0)} %) of {share.Planned.ToString(CultureInfo.InvariantCulture)}"
        : "no planned";

    private static string Spread(Quartiles of, string unit) => $"{Number.Text(of.Median, 0)}{unit} (half {Number.Text(of.Lower, 0)} to {Number.Text(of.Upper, 0)})";

    private static string Percent(double share) => Number.Text(100 * share, 0);

    private static string Open(double? week) => week is double known ? Number.Text(known, 1) : "open";

    private static IEnumerable<string> Closing(ClinicSummary summary) => new[]
    {
        $"Weeks and shares are Kaplan-Meier estimates with log-log intervals, told while at least {summary.Least.Text} people are followed. {WaitPlot.Caution}",
        PlanAdherence.Definition,
        "Stim delivered is what was logged; its minutes are reckoned from the regimen. Forecasts of one knee hang together, so the true interval of their share is wider.",
        $"{Withheld(summary)} Figures tell what happened here, not what caused it. A clinician decides.",
    }.SelectMany(text => PlanText.Wrapped(text, PlanText.AnswerWidth));
}
