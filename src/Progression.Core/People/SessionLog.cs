using System.Collections.Immutable;
using Progression.Core.Quantities;

namespace Progression.Core.People;

/// <summary>What was done on one day: stim, exercises or both. Null means not recorded.</summary>
/// <param name="Date">The day.</param>
/// <param name="Contractions">Stimulated contractions done; 0 for a session without stim.</param>
public sealed record SessionLog(DateOnly Date, int Contractions)
{
    /// <summary>Highest current reached.</summary>
    public Current? Peak { get; init; }

    /// <summary>How the strongest contraction was borne, from 0 (not bearable) to 10 (comfortable).</summary>
    public int? Comfort { get; init; }

    /// <summary>Torque evoked by stim alone.</summary>
    public Torque? Evoked { get; init; }

    /// <summary>Whether a strong full contraction was tolerated.</summary>
    public bool? StrongContractionTolerated { get; init; }

    /// <summary>The exercises done; empty when none was recorded.</summary>
    public ImmutableArray<ExerciseDone> Exercises { get; init; } = [];

    /// <summary>Pain before the session, 0 to 10.</summary>
    public int? PainBefore { get; init; }

    /// <summary>Pain right after it, 0 to 10.</summary>
    public int? PainAfter { get; init; }

    /// <summary>Pain the next morning, 0 to 10; asked for at the next contact.</summary>
    public int? PainNextMorning { get; init; }

    /// <summary>The skin under the pads after the session.</summary>
    public SkinCheck? Skin { get; init; }

    /// <summary>Share of the home work asked for since the session before that was done, as the person says; 100 % is all of it.</summary>
    public Percentage? Adherence { get; init; }

    /// <summary>A remark; null for none.</summary>
    public string? Note { get; init; }
}

/// <summary>What was seen of the skin under the pads.</summary>
public enum SkinCheck
{
    /// <summary>Nothing to see.</summary>
    Clear,

    /// <summary>Even redness that fades within the hour or so, as is usual.</summary>
    FadingRedness,

    /// <summary>Blister, burn, break or redness that stays: no stim on it until it is healed.</summary>
    Damaged,
}
