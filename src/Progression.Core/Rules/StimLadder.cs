using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Rules;

/// <summary>Reads the ladder rules against an assessment.</summary>
public static class StimLadder
{
    /// <summary>The verdict. The strongest outcome that applies wins; the verdict keeps every rule that was read.</summary>
    public static LadderVerdict Judge(LadderFacts facts)
    {
        ImmutableArray<RuleResult> results = [.. LadderRules.All.Where(rule => rule.On.Contains(facts.Rung)).Select(rule => rule.Apply(facts))];
        // Stepping back raises the volume, and an irritated knee is never given more.
        bool irritated = results.Any(result => result.Rule == LadderRules.Irritation && result.Truth == Truth.Holds);
        RuleResult? decided = results.Where(result => result.Truth == Truth.Holds && !(irritated && result.Rule.Then == LadderOutcome.StepBack))
            .MinBy(result => result.Rule.Then);
        RuleResult? step = results.FirstOrDefault(result => result.Rule.Then == LadderOutcome.StepDown);
        (LadderOutcome outcome, LadderRule by) =
            decided is not null && decided.Rule.Then != LadderOutcome.StepDown ? (decided.Rule.Then, decided.Rule)
            : step is null ? (LadderOutcome.Hold, LadderRules.StepBack)
            : (step.Truth switch
            {
                Truth.Holds => LadderOutcome.StepDown,
                Truth.DoesNotHold => LadderOutcome.Hold,
                _ => LadderOutcome.NotEnoughInformation,
            }, step.Rule);
        return new LadderVerdict
        {
            Date = facts.Now.Date,
            From = facts.Rung,
            To = Next(facts.Rung, outcome),
            Outcome = outcome,
            DecidedBy = by,
            Results = results,
        };
    }

    private static Rung Next(Rung rung, LadderOutcome outcome) => outcome switch
    {
        LadderOutcome.Stop => Rung.Stopped,
        LadderOutcome.StepBack => (Rung)Math.Max((int)rung - 1, (int)Rung.HighVolume),
        LadderOutcome.StepDown => (Rung)Math.Min((int)rung + 1, (int)Rung.Stopped),
        _ => rung,
    };
}
