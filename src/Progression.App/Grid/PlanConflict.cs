using System.Collections.Immutable;
using Progression.Core.Plans;

namespace Progression.App.Grid;

/// <summary>A plan that somebody else saved while this one was changed.</summary>
/// <param name="Base">The plan both were made from.</param>
/// <param name="Theirs">What was saved.</param>
/// <param name="Saved">Who saved which revision, and when, as a sentence.</param>
public sealed record PlanConflict(PlanRevision Base, PlanRevision Theirs, string Saved)
{
    /// <summary>What was chosen: whether this person's content is taken. The other cells go by who changed them.</summary>
    public ImmutableDictionary<CellAddress, bool> Picks { get; init; } = ImmutableDictionary<CellAddress, bool>.Empty;

    /// <summary>The cell chosen in the list, from 0.</summary>
    public int Line { get; init; }
}
