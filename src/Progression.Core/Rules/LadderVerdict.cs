using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Rules;

/// <summary>What the ladder rules come to on the day of an assessment, with every rule that was read.</summary>
public sealed record LadderVerdict
{
    /// <summary>The day judged.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>The rung before.</summary>
    public required Rung From { get; init; }

    /// <summary>The rung it leads to; the same where the outcome is no step.</summary>
    public required Rung To { get; init; }

    /// <summary>The outcome.</summary>
    public required LadderOutcome Outcome { get; init; }

    /// <summary>The rule that decided.</summary>
    public required LadderRule DecidedBy { get; init; }

    /// <summary>Every rule read, in order, with its conditions as they came out.</summary>
    public required ImmutableArray<RuleResult> Results { get; init; }

    /// <summary>What to measure or ask to make the open conditions known; empty when nothing is open.</summary>
    public ImmutableArray<string> ToMeasure =>
        [.. Results.SelectMany(result => result.Conditions).Select(condition => condition.Missing).OfType<string>().Distinct()];

    /// <summary>The outcome in words.</summary>
    public string OutcomeWords => Outcome switch
    {
        LadderOutcome.ReferAndLock => "refer and lock",
        LadderOutcome.Stop => "stop stim",
        LadderOutcome.StepBack => "step back",
        LadderOutcome.Hold => "hold",
        LadderOutcome.StepDown => From == Rung.Familiarise ? "go on to high volume" : "step down",
        _ => "not enough information",
    };
}
