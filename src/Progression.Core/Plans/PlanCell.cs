using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>Why the engine put a content into a cell; kept with the plan, so that it can be read when the library has changed.</summary>
/// <param name="Rule">The id of the rule that placed it.</param>
/// <param name="Reason">The reason in one or two sentences.</param>
/// <param name="Inputs">What it rests on.</param>
/// <param name="Limits">The thresholds it was compared with, as they were.</param>
/// <param name="Source">Where the rule comes from.</param>
/// <param name="WouldChange">What would change the answer.</param>
public sealed record Basis(
    string Rule,
    string Reason,
    ImmutableArray<Input> Inputs,
    ImmutableArray<Limit> Limits,
    Source Source,
    string WouldChange);

/// <summary>A content set by hand. The engine never overwrites it.</summary>
/// <param name="Suggested">What the engine would put there; null when it would leave the cell empty.</param>
/// <param name="Reason">Why the therapist wants it so; null when no reason was given.</param>
public sealed record Pin(CellContent? Suggested, string? Reason);

/// <summary>A cell of a plan.</summary>
/// <param name="Content">What stands in it; null for an empty cell.</param>
/// <param name="Basis">Why the engine put its content there.</param>
/// <param name="Pin">Set when the therapist put the content there; null otherwise.</param>
public sealed record PlanCell(CellContent? Content, Basis Basis, Pin? Pin)
{
    /// <summary>Whether the therapist set it by hand.</summary>
    public bool IsPinned => Pin is not null;
}
