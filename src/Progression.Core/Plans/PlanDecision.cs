namespace Progression.Core.Plans;

/// <summary>What was decided on a proposal; kept with the revision that came of it.</summary>
public sealed record PlanDecision
{
    private PlanDecision(DateOnly assessment, int proposed, int taken, string? reason) =>
        (Assessment, Proposed, Taken, Reason) = (assessment, proposed, taken, reason);

    /// <summary>The day of the assessment the proposal rested on.</summary>
    public DateOnly Assessment { get; }

    /// <summary>How many changes were proposed, from 0; pinned cells are not counted.</summary>
    public int Proposed { get; }

    /// <summary>How many of them were taken.</summary>
    public int Taken { get; }

    /// <summary>Why it was decided so; null when no reason was given, which is allowed only where something was taken or nothing proposed.</summary>
    public string? Reason { get; }

    /// <summary>A decision.</summary>
    /// <exception cref="ArgumentException">More is taken than proposed, or everything is refused without a reason.</exception>
    public static PlanDecision Of(DateOnly assessment, int proposed, int taken, string? reason)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(taken);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(taken, proposed);
        return taken == 0 && proposed > 0 && string.IsNullOrWhiteSpace(reason)
            ? throw new ArgumentException("A proposal that is refused as a whole is refused with a reason.", nameof(reason))
            : new PlanDecision(assessment, proposed, taken, string.IsNullOrWhiteSpace(reason) ? null : reason.Trim());
    }
}
