using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Findings;

/// <summary>The answer to "why" for a cell, a number or a finding.</summary>
public sealed record Explanation
{
    /// <summary>What is explained: lane, week and content.</summary>
    public required string Heading { get; init; }

    /// <summary>The reasons, a sentence or two each, most important first.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>What it rests on.</summary>
    public ImmutableArray<Input> Inputs { get; init; } = [];

    /// <summary>The id of the rule behind it.</summary>
    public required string Rule { get; init; }

    /// <summary>The thresholds, each with its own source.</summary>
    public ImmutableArray<Limit> Limits { get; init; } = [];

    /// <summary>Where the rule comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>What would change the answer.</summary>
    public required string WouldChange { get; init; }

    /// <summary>The findings on the cell, worst first.</summary>
    public ImmutableArray<Finding> Findings { get; init; } = [];
}
