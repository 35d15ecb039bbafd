using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>
/// A knee that may become stiff, told while there is time. Nothing is locked by it; while a red flag is open it says nothing, because forecasts are
/// withheld then and the flag speaks.
/// </summary>
internal static class StiffnessChecks
{
    private sealed record Told(string Rule, string Why, ImmutableArray<Input> Inputs, ImmutableArray<Limit> Limits);

    internal static IEnumerable<Finding> Of(PlanFacts facts)
    {
        DateOnly asOf = PlanFacts.AsOf(facts.Case, facts.Plan);
        ImmutableArray<KneeState> bends =
        [
            .. facts.Case.Assessments.Where(visit => visit.Value(MeasureIds.FlexionActive) is not null).Select(visit => KneeState.At(visit, facts.Case)),
        ];
        return bends.IsEmpty || RedFlags.AnyOpen(facts.Case, facts.Library, asOf)
            ? []
            : new[] { SmallChance(facts, bends[^1], asOf), NoGain(facts, bends) }.OfType<Told>().Select(told => Stiff(told, facts, bends[^1]));
    }

    private static Finding Stiff(Told told, PlanFacts facts, KneeState now) => new()
    {
        Rule = told.Rule,
        Severity = Severity.Warning,
        Text = $"The knee may become stiff: {told.Why}. Measure again and tell the surgeon"
            + (facts.Library.Limit(LimitIds.FlexionFloorWeek) is var by && now.Week < by.Value ? $" by week {Number.Text(by.Value)}" : " now")
            + ": what a manipulation gains falls with the delay, most after week 12.",
        Inputs = told.Inputs,
        Limits = told.Limits,
        Source = told.Limits[0].Source,
        Cells = [new CellAddress("flexion", now.Week)],
    };

    /// <summary>The forecast from the person's own readings; the population alone says nothing of this knee.</summary>
    private static Told? SmallChance(PlanFacts facts, KneeState now, DateOnly asOf)
    {
        (Limit least, Limit week) = (facts.Library.Limit(LimitIds.FlexionChance), facts.Library.Limit(LimitIds.FlexionChanceWeek));
        Limit floor = facts.Library.Limit(LimitIds.FlexionFloor);
        double? chance = PostOpWeek.Of(facts.Case.Operation.Date, asOf) > week.Value
            ? null
            : Forecasting.ChanceAtLeast(facts.Case, facts.Library, MeasureIds.FlexionActive, floor.Value, week.Value, asOf);
        string by = $"by week {Number.Text(week.Value)}";
        return chance is not double share || 100 * share >= least.Value ? null : new Told(
            "FLEXION-CHANCE",
            $"the chance of at least {floor.Text} of flexion {by} is under {least.Text}",
            [
                new Input($"Active flexion, {LadderFacts.Day(now.Date)}", $"{Number.Text(now.OwnValue(MeasureIds.FlexionActive)!.Value, 1)} deg"),
                new Input($"Chance {by}, forecast", $"{Number.Text(Math.Floor(100 * share), 0)} %"),
            ],
            [least, week, floor]);
    }

    /// <summary>The latest reading against the one nearest to the week from which a gain is looked for.</summary>
    private static Told? NoGain(PlanFacts facts, ImmutableArray<KneeState> bends)
    {
        (Limit from, Limit near) = (facts.Library.Limit(LimitIds.FlexionStallFrom), facts.Library.Limit(LimitIds.FlexionStallNear));
        (Limit due, Limit under) = (facts.Library.Limit(LimitIds.FlexionFloorWeek), facts.Library.Limit(LimitIds.FlexionStallUnder));
        KneeState now = bends[^1];
        KneeState? then = bends.Where(one => Math.Abs(one.Week - from.Value) <= near.Value).MinBy(one => Math.Abs(one.Week - from.Value));
        bool asked = then is not null && now.Week >= due.Value && now.OwnValue(MeasureIds.FlexionActive) < under.Value;
        return asked && Changes.Between(then!, now, MeasureIds.FlexionActive, facts.Library) is { Class: ChangeClass.NoDetectableChange or ChangeClass.Worse } change
            ? new Told(
                "FLEXION-NO-GAIN",
                $"flexion is under {under.Text}, with no detectable gain from week {Number.Text(from.Value)} on",
                change.Inputs,
                [from, near, due, under])
            : null;
    }
}
