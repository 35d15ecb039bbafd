using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Plans;

namespace Progression.Core.Findings;

/// <summary>One cell to be changed; null content empties it.</summary>
/// <param name="Address">Which cell.</param>
/// <param name="Content">What to put there.</param>
public sealed record CellChange(CellAddress Address, CellContent? Content);

/// <summary>What would cure a finding, ready to be done.</summary>
/// <param name="Text">The cure in words.</param>
/// <param name="Changes">The cell changes that do it; empty when only a person can.</param>
public sealed record Cure(string Text, ImmutableArray<CellChange> Changes);

/// <summary>Something a rule found in a plan or a case, with everything needed to judge it.</summary>
public sealed record Finding
{
    /// <summary>The permanent id of the rule.</summary>
    public required string Rule { get; init; }

    /// <summary>How much it weighs.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What was found, with cells and figures, in one or two sentences.</summary>
    public required string Text { get; init; }

    /// <summary>What the rule looked at.</summary>
    public ImmutableArray<Input> Inputs { get; init; } = [];

    /// <summary>The thresholds it compared with.</summary>
    public ImmutableArray<Limit> Limits { get; init; } = [];

    /// <summary>Where the rule comes from.</summary>
    public required Source Source { get; init; }

    /// <summary>The cells it concerns; empty when it concerns the whole plan.</summary>
    public ImmutableArray<CellAddress> Cells { get; init; } = [];

    /// <summary>What would cure it; null when nothing can be offered.</summary>
    public Cure? Cure { get; init; }
}
