using Progression.Core.Plans;

namespace Progression.Core.Reassessing;

/// <summary>A change of one cell that the engine suggests after an assessment.</summary>
public sealed record ProposedChange
{
    /// <summary>The cell.</summary>
    public required CellAddress Address { get; init; }

    /// <summary>What stands there; null for an empty cell.</summary>
    public required CellContent? Old { get; init; }

    /// <summary>What is suggested; null to leave the cell empty.</summary>
    public required CellContent? New { get; init; }

    /// <summary>Why the engine would put it there; the cell carries it once the change is taken.</summary>
    public required Basis Basis { get; init; }

    /// <summary>Why it changes, in a sentence or two, naming the assessment.</summary>
    public required string Reason { get; init; }

    /// <summary>How sure that is, in words, with a figure where there is one.</summary>
    public required string Confidence { get; init; }

    /// <summary>Whether the therapist set the cell by hand: then it is a disagreement to be seen, and cannot be taken.</summary>
    public required bool IsPinned { get; init; }

    /// <summary>The change it only makes sense together with: it is taken and refused with that one. Null when it stands alone.</summary>
    public CellAddress? With { get; init; }
}
