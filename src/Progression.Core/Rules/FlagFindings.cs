using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Rules;

/// <summary>What the red flags and the bend of the knee say on the plan.</summary>
internal static class FlagFindings
{
    internal static IEnumerable<Finding> Of(LadderFacts facts)
    {
        IEnumerable<Finding> flags = facts.Flags.Where(state => state.IsOpen).Select(Flag);
        bool stiff = facts.Flags.Any(state => state.Flag.Id == FlagIds.Stiff && state.IsOpen);
        return flags.Concat(stiff ? [] : Bend(facts));
    }

    private static Finding Flag(FlagState state)
    {
        bool stiff = state.Flag.Id == FlagIds.Stiff;
        LadderRule rule = stiff ? LadderRules.ReferStiff : LadderRules.Refer;
        Judged shown = state.Shown!;
        return new Finding
        {
            Rule = rule.Id,
            Severity = stiff ? Severity.Severe : Severity.Stop,
            Text = $"{(stiff ? "" : "No stim: ")}{shown.Words}, since {LadderFacts.Day(state.Since!.Value)}. {rule.Advice}{(state.Score is { } score ? " " + score.Words : "")}",
            Inputs = shown.Inputs,
            Limits = shown.Limits,
            Source = state.Flag.Source,
            Cure = new Cure($"Checklist: {string.Join(" ", state.Flag.Checklist)} {state.HowToClose}", []),
        };
    }

    /// <summary>The warnings on flexion, the nearest to the floor first; at most one of them is given.</summary>
    private static IEnumerable<Finding> Bend(LadderFacts facts)
    {
        (string Rule, Judged Judged, string Advice)[] warnings =
        [
            ("FLEXION-EARLY", SafetyConditions.FlexionEarlyWarning(facts), "Re-measure and tell the surgeon if it does not move."),
            ("FLEXION-NEAR-FLOOR", SafetyConditions.FlexionNearFloor(facts), "By the error of the reading it may be under the floor: re-measure."),
            ("FLEXION-FIRST", SafetyConditions.FlexionFirstWeeks(facts), "At risk of bending less than usual at week 7: work on the bend, re-measure within the week."),
        ];
        return warnings.Where(warning => warning.Judged.Truth == Truth.Holds).Take(1).Select(warning => new Finding
        {
            Rule = warning.Rule,
            Severity = Severity.Warning,
            Text = $"Early warning: {warning.Judged.Words}. {warning.Advice}",
            Inputs = warning.Judged.Inputs,
            Limits = warning.Judged.Limits,
            Source = warning.Judged.Limits[0].Source,
            Cells = [new CellAddress("flexion", facts.Now.Week)],
        });
    }
}
