using System.Collections.Immutable;
using System.Globalization;
using Progression.App.Pictures;
using Progression.Core.Entry;
using Progression.Core.Findings;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.App.Grid;

/// <summary>What a reviewer reads first: whether it is signed, what changed since and why, what was found, measured and said.</summary>
public static class ReviewText
{
    /// <summary>The page, wrapped to a width.</summary>
    public static IReadOnlyList<PictureRow> Lines(GridState state, int width)
    {
        ArgumentNullException.ThrowIfNull(state);
        GridReview review = state.Review!;
        return
        [
            .. Wrapped(SignatureWords.Of(review.Standing) + ".", width, review.Standing.State == SignatureState.Signed ? Ink.Strong : Ink.Warning),
            .. Wrapped(SignatureWords.Review(review.Standing), width, Ink.Strong),
            .. review.Newer.Length > 0 ? Wrapped($"{review.Newer}: U in the grid shows it.", width, Ink.Warning) : [],
            .. Part("Said", review.Plan.Record.Comments.Select(said => Line(state, said)), width),
            .. Part("Found", Findings(state), width),
            .. Part(review.Signed is null ? "Never signed, so all of it is new. Set by hand" : "Changed since it was signed", Changes(state), width),
            .. Part("Decided", Decided(state.Plan, review.Signed), width),
            .. Part("Measured since", Measured(state), width),
            .. Part("Done about it", review.Plan.Record.Acts.Reverse().Select(Done), width),
        ];
    }

    /// <summary>A comment in a line: "sue: Too fast a step."</summary>
    public static string Line((ReviewAct Act, ReviewComment Comment) said) => SafeText.OneLine($"{said.Act.By.Name}: {said.Comment.Text}");

    /// <summary>A comment in a line, with its cell, day and revision.</summary>
    internal static string Line(GridState state, (ReviewAct Act, ReviewComment Comment) said) => SafeText.OneLine(
        $"{Place(state, said.Comment.Cell)}: {said.Comment.Text} ({said.Act.By.Name}, {SignatureWords.Day(said.Act.At)}, revision {said.Act.Plan.Revision})");

    /// <summary>What the cells that differ from the signed plan were and are, each with why; of a plan that never was signed those set by hand.</summary>
    internal static IEnumerable<string> Changes(GridState state)
    {
        IEnumerable<(CellAddress Address, string Change)> changes = state.Review!.Signed is { } signed
            ? PlanDifference.Between(signed, state.Plan).Select(change => (change.Address, $"was {Content(state, change.Address, change.Before)}, is {Content(state, change.Address, change.After)}"))
            : state.Plan.Cells.Where(cell => PlanRisk.IsOverride(cell.Value))
                .OrderBy(cell => state.Plan.Lanes.IndexOf(state.Plan.LaneOf(cell.Key.Lane)!)).ThenBy(cell => cell.Key.Week)
                .Select(cell => (cell.Key, $"{Content(state, cell.Key, cell.Value)} instead of {Content(state, cell.Key, cell.Value with { Content = cell.Value.Pin!.Suggested, Pin = null })}"));
        return changes.Select(change => $"{Place(state, change.Address)}: {change.Change}. {Why(state.Plan.At(change.Address))}".TrimEnd());
    }

    private static IEnumerable<string> Findings(GridState state)
    {
        ImmutableArray<Finding> weighty = [.. state.Findings.Where(finding => finding.Severity > Severity.Note)];
        return weighty.IsEmpty ? ["nothing that weighs more than a note"] : weighty.Select(FindingWords.Line);
    }

    private static IEnumerable<string> Decided(PlanRevision plan, PlanRevision? signed) => plan.Decision is { } decision && decision != signed?.Decision
        ? [$"{decision.Taken} of {decision.Proposed} changes proposed after the assessment of {decision.Assessment:yyyy-MM-dd} were taken." + (decision.Reason is { } reason ? $" {reason}" : "")]
        : [];

    private static IEnumerable<string> Measured(GridState state)
    {
        DateOnly since = state.Review!.Standing.Signature is { } signed ? DateOnly.FromDateTime(signed.At.UtcDateTime) : state.Plan.Operation;
        Case patient = state.Desk.Case;
        int sessions = patient.Sessions.Count(log => log.Date >= since);
        return
        [
            .. patient.Assessments.Where(visit => visit.Date >= since).Select(visit => $"assessment of {visit.Date:yyyy-MM-dd}: {string.Join(", ", visit.Readings.Values.Select(reading => Reading(state, reading)))}"),
            .. sessions == 0 ? [] : new[] { sessions == 1 ? "1 session logged" : $"{sessions} sessions logged" },
        ];
    }

    private static string Reading(GridState state, Reading reading) => state.Desk.Library.Measures.GetValueOrDefault(reading.Measure) is { } measure
        ? $"{measure.Title} {MeasureLabel.Value(measure, reading.Value)}{MeasureLabel.Unit(measure)}"
        : $"{reading.Measure} {reading.Value.ToString("0.###", CultureInfo.InvariantCulture)} (the library has no such measure now, so its unit is not known)";

    private static string Why(PlanCell? cell) => cell switch
    {
        { Pin: { Reason: { } reason } } => $"Set by hand: {reason}",
        { Pin: not null } => "Set by hand, no reason given.",
        { Basis.Reason: { } reason } => reason,
        _ => "",
    };

    private static string Content(GridState state, CellAddress address, PlanCell? cell) =>
        (cell?.Content is { } content && state.Plan.LaneOf(address.Lane) is { } lane ? CellNotation.Text(lane, content, state.Desk.Library) : "empty") + (cell is { IsPinned: true } ? " *" : "");

    private static string Place(GridState state, CellAddress? cell) =>
        cell is not { } address ? "The plan" : $"{state.Plan.LaneOf(address.Lane)?.Title ?? address.Lane}, week {address.Week}";

    private static string Done(ReviewAct act) => SafeText.OneLine(
        $"{act.At.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC: {act.By.Name} ({act.By.Role.ToString().ToLowerInvariant()}) {SignatureWords.Of(act.Step)}, revision {act.Plan.Revision}"
            + (act.Meaning is { } meaning ? $": \"{SignatureWords.Of(meaning)}\"" : ""));

    private static IEnumerable<PictureRow> Part(string title, IEnumerable<string> lines, int width)
    {
        ImmutableArray<string> there = [.. lines];
        return there.IsEmpty ? [] :
        [
            PictureRow.Of(title, Ink.Strong),
            .. there.SelectMany(line => TextFit.Wrap(SafeText.OneLine(line), width - 4).Select((part, at) => PictureRow.Of((at == 0 ? "  " : "    ") + part))),
        ];
    }

    private static IEnumerable<PictureRow> Wrapped(string text, int width, Ink ink) => text.Length == 0 ? [] : TextLines.Wrapped(SafeText.OneLine(text), width, ink);
}
