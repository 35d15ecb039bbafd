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

    /// <summary>
    /// What would change the answer: what holds and would have to end, then for each unmet condition of the next step how much is to go. Empty when the step
    /// is taken; what is not known stands in <see cref="ToMeasure"/>.
    /// </summary>
    public ImmutableArray<string> WouldChange =>
    [
        .. DecidedBy.Then is LadderOutcome.StepDown or LadderOutcome.Stop || Outcome != DecidedBy.Then ? [] : Conditions(DecidedBy).Where(one => one.Truth == Truth.Holds).Select(one => $"if no longer so: {one.Words}"),
        .. Results.Where(result => result.Rule.Then == LadderOutcome.StepDown).SelectMany(result => result.Conditions).Where(one => one.Truth == Truth.DoesNotHold).Select(ToGo),
    ];

    /// <summary>
    /// For a step down or a stop on criteria: the chance, 0 to 1, that the least certain criterion is not truly met, by its reading and error alone. Null
    /// for any other outcome, and where no criterion is a figure with a known error.
    /// </summary>
    public double? FalseAdvance => Weakest?.ChanceNotMet;

    /// <summary>The criterion of <see cref="FalseAdvance"/>: "extension lag"; null when there is none.</summary>
    public string? WeakestCriterion => Weakest?.What;

    /// <summary>Where one of several readings is enough, the surest of them counts for its condition.</summary>
    private Gap? Weakest => Outcome is not (LadderOutcome.StepDown or LadderOutcome.Stop) || To == From ? null
        : Conditions(DecidedBy).Select(one => one.Gaps.Where(gap => gap.Margin >= 0).MinBy(gap => gap.ChanceNotMet)).OfType<Gap>()
            .Where(gap => gap.ChanceNotMet is not null).MaxBy(gap => gap.ChanceNotMet);

    private ImmutableArray<Judged> Conditions(LadderRule rule) => Results.FirstOrDefault(result => result.Rule == rule)?.Conditions ?? [];

    private static string ToGo(Judged condition) =>
        condition.Gaps.Any(gap => gap.Margin < 0) ? string.Join(", or ", condition.Gaps.Where(gap => gap.Margin < 0).Select(gap => gap.Words))
        : condition.Margin is null ? $"not yet: {condition.Words}"
        : $"not yet: {condition.Words} ({condition.Margin})";

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
