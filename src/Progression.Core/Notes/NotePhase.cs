using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Forecasts;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;
using Progression.Core.Rules;

namespace Progression.Core.Notes;

/// <summary>Where stim stands on its ladder, what the rules came to at the last visit and why, and what the clinician decided.</summary>
internal static class NotePhase
{
    internal static IEnumerable<Block> Of(NoteOrder order)
    {
        LadderVerdict? verdict = order.Patient.Assessments.IsEmpty ? null : LadderCourse.Of(order.Patient, order.Library, order.Patient.Assessments[^1].Date).Latest;
        yield return new Block.Heading(2, "Phase of stim");
        yield return new Block.Paragraph(verdict is null ? "The rules were not read: there was no stim session before the last visit." : Outcome(order, verdict));
        if (verdict is not null)
        {
            yield return new Block.Points([.. Reasons(verdict)], InOrder: false);
        }

        yield return new Block.Paragraph(Planned(order));
        ImmutableArray<string> decided = [.. Decision(order.Plan), .. ByHand(order)];
        if (!decided.IsEmpty)
        {
            yield return new Block.Points(decided, InOrder: false);
        }
    }

    private static string Outcome(NoteOrder order, LadderVerdict verdict)
    {
        string from = order.Library.RungOf(verdict.From).Title.ToLowerInvariant();
        string to = verdict.To == verdict.From ? $", on {from}" : $", from {from} to {order.Library.RungOf(verdict.To).Title.ToLowerInvariant()}";
        return $"Visit of {NoteOrder.Day(verdict.Date)}. The rules suggest: {verdict.OutcomeWords}{to}. {verdict.DecidedBy.Title} ({verdict.DecidedBy.Id}; {verdict.DecidedBy.Source}).";
    }

    private static IEnumerable<string> Reasons(LadderVerdict verdict) =>
    [
        .. verdict.Results.Where(result => result.Rule == verdict.DecidedBy).SelectMany(result => result.Conditions).Select(one => $"{one}."),
        .. verdict.FalseAdvance is double chance ? new[] { $"Chance that the least certain criterion ({verdict.WeakestCriterion}) is not truly met, by its reading and error alone: {ForecastWords.InTen(chance)}." } : [],
        .. verdict.WouldChange.Select(one => $"Would change it: {one}."),
        .. verdict.ToMeasure.Select(one => $"Not known: {one}."),
    ];

    private static string Planned(NoteOrder order)
    {
        int week = Math.Clamp(PostOpWeek.Of(order.Plan.Operation, order.Today), order.Plan.FirstWeek, order.Plan.Weeks);
        return order.Plan.ContentAt(Lanes.Stim, week) is StimCell { Contractions: > 0 } cell
            ? FormattableString.Invariant($"On the plan in week {week}: {order.Library.RungOf(cell.Rung).Title.ToLowerInvariant()}. Last tolerated current: {LastCurrent.Words(order.Patient, order.Today)}.")
            : FormattableString.Invariant($"On the plan in week {week}: no stim. Last tolerated current: {LastCurrent.Words(order.Patient, order.Today)}.");
    }

    private static IEnumerable<string> Decision(PlanRevision plan) => plan.Decision is { } decision
        ? [FormattableString.Invariant($"After the visit of {NoteOrder.Day(decision.Assessment)}, {decision.Taken} of {decision.Proposed} proposed changes were taken{(decision.Reason is null ? "." : $": {decision.Reason}")}")]
        : [];

    private static IEnumerable<string> ByHand(NoteOrder order) =>
        from pair in order.Plan.Cells
        where PlanRisk.IsOverride(pair.Value) && pair.Key.Week >= order.Plan.FirstOpenWeek
        orderby pair.Key.Week, pair.Key.Lane
        let lane = order.Plan.LaneOf(pair.Key.Lane)
        where lane is not null
        select FormattableString.Invariant($"Set by hand in week {pair.Key.Week}, {lane.Title}: {Text(order, lane, pair.Value.Content)} instead of {Text(order, lane, pair.Value.Pin!.Suggested)}. Reason: {pair.Value.Pin.Reason ?? "none given"}.");

    private static string Text(NoteOrder order, Lane lane, CellContent? content) => content is null ? "nothing" : CellNotation.Text(lane, content, order.Library);
}
