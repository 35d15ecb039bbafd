using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>The milestones that decide when an exercise may be expected to be possible. A library without one of them is refused.</summary>
public static class MilestoneIds
{
    /// <summary>A voluntary quadriceps contraction can be seen.</summary>
    public const string Contraction = "contraction-visible";

    /// <summary>The straight leg is raised unaided.</summary>
    public const string StraightLegRaise = "straight-leg-raise";

    /// <summary>Every milestone that must be present.</summary>
    public static ImmutableArray<string> All { get; } = [Contraction, StraightLegRaise];
}
