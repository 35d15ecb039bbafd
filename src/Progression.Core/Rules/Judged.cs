using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Rules;

/// <summary>A condition as it came out: its words and its answer, made from the same limit, so that they cannot disagree.</summary>
/// <param name="Words">The condition in words, with its limit.</param>
/// <param name="Truth">Whether it holds.</param>
/// <param name="Inputs">What it looked at.</param>
public sealed record Judged(string Words, Truth Truth, ImmutableArray<Input> Inputs)
{
    /// <summary>The thresholds it compared with.</summary>
    public ImmutableArray<Limit> Limits { get; init; } = [];

    /// <summary>Whether it rests on what is expected by the milestones rather than on a reading or an answer.</summary>
    public bool IsExpected { get; init; }

    /// <summary>How far the value is from the limit, in words; null when nothing was compared.</summary>
    public string? Margin { get; init; }

    /// <summary>What to measure or ask to make it known; null when it is known.</summary>
    public string? Missing { get; init; }

    /// <summary>
    /// How far each reading behind it is from what it asks, where it asks for a figure: several where one of them is enough. Empty where nothing was read.
    /// </summary>
    public ImmutableArray<Gap> Gaps { get; init; } = [];

    /// <summary>One line: the words, then "yes", "no" or "not known", then the margin or what is missing.</summary>
    public override string ToString()
    {
        string answer = Truth switch { Truth.Holds => "yes", Truth.DoesNotHold => "no", _ => "not known" };
        string rest = Missing is not null ? $" ({Missing})" : Margin is not null ? $" ({Margin})" : "";
        return $"{Words}: {answer}{rest}";
    }
}
