using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Caseload;

/// <summary>A reading that lags behind its milestones.</summary>
/// <param name="Measure">The measure.</param>
/// <param name="Value">The latest reading, in the measure's unit.</param>
/// <param name="Goal">What the milestones ask for on the day of the reading.</param>
/// <param name="Day">That day, counted from the operation.</param>
public sealed record BehindGoal(Measure Measure, double Value, double Goal, int Day);

/// <summary>Where a case stands on a day: what a list tells of it.</summary>
public sealed record CaseStanding
{
    /// <summary>The post-op week of the day, from 1; 0 or less before the operation.</summary>
    public required int Week { get; init; }

    /// <summary>What is due or will be, the earliest first; empty once the plan has ended.</summary>
    public ImmutableArray<Due> Dues { get; init; } = [];

    /// <summary>Whether something is due on the day or was before.</summary>
    public bool IsDue { get; init; }

    /// <summary>The readings that are behind; empty when none is.</summary>
    public ImmutableArray<BehindGoal> Behind { get; init; } = [];

    /// <summary>Why planning or stim is blocked, a sentence each; empty when it is not.</summary>
    public ImmutableArray<string> Blocked { get; init; } = [];

    /// <summary>Whether the plan's latest revision is not signed; false where there is no plan.</summary>
    public bool IsUnsigned { get; init; }

    /// <summary>Whether the plan's last week has passed.</summary>
    public bool HasEnded { get; init; }

    /// <summary>The latest reading of the extension lag, degrees; null when it was never measured.</summary>
    public double? Lag { get; init; }

    /// <summary>The latest reading of flexion, degrees; null when it was never measured.</summary>
    public double? Flexion { get; init; }

    /// <summary>What is due first; null when nothing is.</summary>
    public Due? Next => Dues.IsEmpty ? null : Dues[0];
}
