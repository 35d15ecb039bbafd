using Progression.Core.Quantities;

namespace Progression.Core.People;

/// <summary>What was done with stim on one day. Null means not recorded.</summary>
/// <param name="Date">The day.</param>
/// <param name="Contractions">Stimulated contractions done.</param>
public sealed record SessionLog(DateOnly Date, int Contractions)
{
    /// <summary>Highest current reached.</summary>
    public Current? Peak { get; init; }

    /// <summary>Torque evoked by stim alone.</summary>
    public Torque? Evoked { get; init; }

    /// <summary>Whether a strong full contraction was tolerated.</summary>
    public bool? StrongContractionTolerated { get; init; }

    /// <summary>A remark; null for none.</summary>
    public string? Note { get; init; }
}
