using System.Collections.Immutable;
using Progression.App.Grid;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Forecasts;
using Progression.Core.Measures;
using Progression.Core.Plans;
using Progression.Core.Reassessing;
using Progression.Core.Rules;

namespace Progression.App.Commands.Reassess;

/// <summary>What <c>reassess</c> answers as lines of text: flags, ladder, changes, forecasts, the proposal, and whether anything was saved.</summary>
internal static class ReassessText
{
    internal static string Of(ReassessAnswer answer) => string.Join('\n',
    [
        $"{answer.Patient.Code}: what the visit of {answer.Day:yyyy-MM-dd} comes to",
        .. answer.Found.Flags.Where(flag => flag.IsOpen).SelectMany(Flag),
        .. Part("Ladder", Ladder(answer)),
        .. Part("What changed", answer.Changes.Select(Changed)),
        .. Part("What is expected", answer.Forecasts.SelectMany(one => Expected((one.Measure.Title, answer.Standing.Weeks), one.Answer))),
        "",
        .. Proposed(answer),
        "",
        .. Wrapped(Outcome(answer), 0),
        .. Wrapped(PlanText.Caution, 0),
    ]);

    private static IEnumerable<string> Flag(FlagState flag) =>
    [
        "",
        .. Wrapped($"X red flag: {flag.Flag.Title}. Nothing is advanced and no forecast is made while it is open.", 0),
        .. flag.Flag.Checklist.SelectMany(line => Wrapped($"- {line}", 2)),
        .. Wrapped(flag.HowToClose, 2),
    ];

    private static IEnumerable<string> Ladder(ReassessAnswer answer)
    {
        if (answer.Found.Verdict is not { } verdict)
        {
            return ["Not judged: there was no stim session before this visit."];
        }

        string step = verdict.To == verdict.From ? "" : $", from {answer.Library.RungOf(verdict.From).Title.ToLowerInvariant()} to {answer.Library.RungOf(verdict.To).Title.ToLowerInvariant()}";
        return
        [
            $"{verdict.OutcomeWords}{step}: {verdict.DecidedBy.Title}.",
            .. verdict.WouldChange.Select(one => $"Would change it: {one}."),
            .. verdict.ToMeasure.Select(one => $"Not known: {one}."),
        ];
    }

    private static string Changed(Change change) =>
        $"{change.Mark} {change.Measure.Title}: {change.Words}, {MeasureText.Shown(change.Measure, change.Old)} ({change.From:yyyy-MM-dd}) to {MeasureText.Shown(change.Measure, change.New)}.";

    /// <summary>The milestones that the plan reaches; "forecast" tells the others.</summary>
    private static IEnumerable<string> Expected((string Title, int Weeks) of, ForecastAnswer answer) => answer.Forecast is not { } forecast
        ? [$"{of.Title}: no forecast. {answer.WhyNot}"]
        : [.. forecast.Milestones.Where(one => one.Milestone.Week <= of.Weeks).Select(one => $"{one.Milestone.Title}: {one.Words}."), .. forecast.Surprise is { IsOff: true } off ? [$"{of.Title}: {off.Words}."] : ImmutableArray<string>.Empty];

    private static IEnumerable<string> Proposed(ReassessAnswer answer)
    {
        if (answer.Found.Proposal.Value is not { } proposal)
        {
            return [$"No proposal: {string.Join(" ", answer.Found.Proposal.Problems.Select(problem => problem.Wrong))}"];
        }

        int open = proposal.Open.Count();
        int pinned = proposal.Changes.Length - open;
        string head = open == 0 ? "Proposal: nothing changes" : $"Proposal: {open} change{(open == 1 ? "" : "s")}";
        return [head + (pinned == 0 ? "" : $"; {pinned} cell{(pinned == 1 ? "" : "s")} set by hand would be other"), .. proposal.Changes.SelectMany(change => Lines(answer, change))];
    }

    private static IEnumerable<string> Lines(ReassessAnswer answer, ProposedChange change)
    {
        Lane lane = Lanes.For(withStim: true).First(one => one.Id == change.Address.Lane);
        string old = Cell(answer, lane, change.Old);
        string kept = change.IsPinned ? "* set by hand and kept: " : "";
        return
        [
            .. Wrapped($"Week {change.Address.Week}, {lane.Title}: {kept}{old} -> {Cell(answer, lane, change.New)}", 2),
            .. Wrapped($"{change.Reason} {change.Confidence}", 6),
        ];
    }

    private static string Cell(ReassessAnswer answer, Lane lane, CellContent? content) => content is null ? "empty" : CellNotation.Text(lane, content, answer.Library);

    private static string Outcome(ReassessAnswer answer) => answer.Decision is { } decision
        ? $"Saved with {decision.Taken} of {decision.Proposed} changes taken{(decision.Reason is null ? "" : $": {decision.Reason}")}."
        : "Nothing was saved. Take the proposal with --accept all, or keep the plan with --accept none and a reason.";

    private static IEnumerable<string> Part(string title, IEnumerable<string> lines) => ["", title, .. lines.SelectMany(line => Wrapped(line, 2))];

    private static IEnumerable<string> Wrapped(string text, int indent) =>
        TextFit.Wrap(SafeText.OneLine(text), PlanText.AnswerWidth - indent).Select(line => new string(' ', indent) + line);
}
