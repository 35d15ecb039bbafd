using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Pictures;
using Progression.Core.Adherence;
using Progression.Core.Outcomes;
using Progression.Core.Plots;
using Progression.Core.Quantities;
using Progression.Core.Statistics;

namespace Progression.App.Figures;

/// <summary>The clinic's figures to be read; in a narrow room the later weeks are left out.</summary>
/// <param name="summary">The figures.</param>
/// <param name="width">Longest line.</param>
internal sealed class FiguresText(ClinicSummary summary, int width)
{
    /// <summary>The width at which nothing is left out.</summary>
    internal const int WholeWidth = 112;

    private const int Title = 36;
    private const int WithoutWeeks = 72;
    private const int PerWeek = 20;
    private const int Reading = 100;

    private static readonly ImmutableArray<double> AllWeeks = [6, 12];

    private readonly ImmutableArray<double> _weeks = [.. AllWeeks.Take(Math.Max(0, (width - WithoutWeeks) / PerWeek))];

    /// <summary>Why a figure is not told.</summary>
    internal static string Withheld(ClinicSummary summary) =>
        $"Not told: fewer than {summary.Least.Text} people are behind it, or behind a group that could be reckoned from it.";

    /// <summary>The lines.</summary>
    internal ImmutableArray<string> Lines() => [.. summary.Groups.SelectMany(Lines), .. Closing().SelectMany(Wrapped)];

    private IEnumerable<string> Lines(OutcomeGroup group)
    {
        string name = group.Name == "all" ? $"All cases on {summary.Today.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : group.Name;
        if (group.Cases is not int cases)
        {
            return [.. Wrapped($"{name}: {Withheld(summary)}"), ""];
        }

        ImmutableArray<WaitFigures> waits = [.. group.Waits.OfType<WaitFigures>()];
        double? gap = waits.FirstOrDefault(wait => wait.Goal.Id == OutcomeGoal.LagClosed)?.GapWeeks;
        return
        [
            string.Create(CultureInfo.InvariantCulture, $"{name}: {cases:N0} cases"), "",
            $"{"Weeks from the operation to",-Title}  people  seen  {"median (95 %)",-20}  {string.Join("  ", _weeks.Select(week => $"{$"by week {Number.Text(week)} (95 %)",-18}"))}".TrimEnd(),
            .. waits.Select(Line),
            .. waits.Length < group.Waits.Length ? Wrapped($"{group.Waits.Length - waits.Length} more. {Withheld(summary)}") : [],
            .. gap is null ? [] : Wrapped($"The lag closed before it was seen to: in the middle case the visit before, when it was open, was {Number.Text(gap.Value, 1)} wk earlier."),
            "",
            .. Done(group).SelectMany(Wrapped),
            "",
        ];
    }

    private IEnumerable<string> Wrapped(string text) => TextFit.Wrap(text, Math.Min(width, Reading));

    private string Line(WaitFigures wait)
    {
        KaplanMeier curve = wait.Curve;
        string median = curve.Median is double half ? $"{Number.Text(half, 1)} ({Open(curve.MedianLow)} to {Open(curve.MedianHigh)})" : $"over {Number.Text(curve.Steps[^1].Time, 0)}";
        string title = wait.Goal.Title.Split(", as ")[0].Split(" (")[0];
        title = title.Length > Title ? title[..(Title - 3)] + "..." : title;
        return $"{title,-Title}  {wait.People,6}  {wait.Events,4}  {median,-20}  {string.Join("  ", _weeks.Select(week => $"{Share(wait, week),-18}"))}".TrimEnd();
    }

    // Beyond what is told it can only have become more.
    private static string Share(WaitFigures wait, double week) => wait.ReachedBy(week) is not { } reached
        ? wait.Curve.Steps[^1].Waiting == 1 ? "not known" : $"at least {Percent(1 - wait.Curve.Steps[^1].Waiting)} %"
        : $"{Percent(reached.Share)} %{(reached.Interval is (double low, double high) ? $" ({Percent(low)} to {Percent(high)})" : "")}";

    private IEnumerable<string> Done(OutcomeGroup group)
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

    private IEnumerable<string> Closing() =>
    [
        $"Weeks and shares are Kaplan-Meier estimates with log-log intervals, told while at least {summary.Least.Text} people are followed. {WaitPlot.Caution}",
        PlanAdherence.Definition,
        "Stim delivered is what was logged; its minutes are reckoned from the regimen. Forecasts of one knee hang together, so the true interval of their share is wider.",
        $"{Withheld(summary)} Figures tell what happened here, not what caused it. A clinician decides.",
    ];
}
