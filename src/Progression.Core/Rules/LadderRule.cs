using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Rules;

/// <summary>A condition of a ladder rule: judges the facts and says so in words.</summary>
/// <param name="facts">What is looked at.</param>
public delegate Judged LadderCondition(LadderFacts facts);

/// <summary>A rule of the stim ladder, read top to bottom as a clinician would say it.</summary>
public sealed record LadderRule
{
    /// <summary>The permanent id; never reused.</summary>
    public required string Id { get; init; }

    /// <summary>The rule as a sentence spoken in clinic.</summary>
    public required string Title { get; init; }

    /// <summary>Its conditions.</summary>
    public required ImmutableArray<LadderCondition> When { get; init; }

    /// <summary>Whether one condition is enough; otherwise all must hold.</summary>
    public bool AnyIsEnough { get; init; }

    /// <summary>The rungs on which it is read; empty for all but the last.</summary>
    public ImmutableArray<Rung> On { get; init; } = [];

    /// <summary>What it comes to when it applies.</summary>
    public required LadderOutcome Then { get; init; }

    /// <summary>What to do, in words.</summary>
    public required string Advice { get; init; }

    /// <summary>Where it comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>What it cannot see.</summary>
    public required string KnownLimits { get; init; }

    /// <summary>The rule read against facts.</summary>
    public RuleResult Apply(LadderFacts facts)
    {
        ImmutableArray<Judged> judged = [.. When.Select(condition => condition(facts))];
        IEnumerable<Truth> truths = judged.Select(one => one.Truth);
        return new RuleResult(this, AnyIsEnough ? Truths.Any(truths) : Truths.All(truths), judged);
    }
}

/// <summary>A rule as it came out.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Truth">Whether it applies.</param>
/// <param name="Conditions">Its conditions as they came out, in written order.</param>
public sealed record RuleResult(LadderRule Rule, Truth Truth, ImmutableArray<Judged> Conditions);
