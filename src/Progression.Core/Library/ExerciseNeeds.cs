using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>What must be so before an exercise is given. Null asks for nothing.</summary>
public sealed record ExerciseNeeds
{
    /// <summary>The extension lag is at most this.</summary>
    public Angle? LagAtMost { get; init; }

    /// <summary>Knee flexion is at least this.</summary>
    public Angle? FlexionAtLeast { get; init; }

    /// <summary>At least this much load is allowed on the leg.</summary>
    public WeightBearing? WeightBearingAtLeast { get; init; }

    /// <summary>A voluntary quadriceps contraction can be seen.</summary>
    public bool ContractionVisible { get; init; }

    /// <summary>The straight leg can be raised.</summary>
    public bool StraightLegRaise { get; init; }

    /// <summary>The quadriceps index (operated to other side) is at least this.</summary>
    public Percentage? IndexAtLeast { get; init; }

    /// <summary>The first post-op week in which it is given, counted from 1; null for no such bound.</summary>
    public int? WeekAtLeast { get; init; }
}
