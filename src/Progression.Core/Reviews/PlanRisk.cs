using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Plans;

namespace Progression.Core.Reviews;

/// <summary>What a plan has that a reviewer looks at first: the order of the queue is made from it.</summary>
/// <param name="Stops">Safety stops.</param>
/// <param name="Severe">Severe findings.</param>
/// <param name="Warnings">Warnings.</param>
/// <param name="Overrides">Cells set by hand against the suggestion, and proposed changes not taken, since the plan was signed last.</param>
/// <param name="Changed">Cells that differ from the plan as it was signed last; null when it never was.</param>
public sealed record PlanRisk(int Stops, int Severe, int Warnings, int Overrides, int? Changed)
{
    /// <summary>What speaks against a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="signed">The plan as it was signed last; null when it never was.</param>
    /// <param name="findings">All findings on the plan.</param>
    public static PlanRisk Of(PlanRevision plan, PlanRevision? signed, ImmutableArray<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(plan);
        int refused = plan.Decision is { } decision && decision != signed?.Decision ? decision.Proposed - decision.Taken : 0;
        return new PlanRisk(
            Count(findings, Severity.Stop), Count(findings, Severity.Severe), Count(findings, Severity.Warning),
            plan.Cells.Count(cell => IsOverride(cell.Value) && !PlanDifference.AreSame(cell.Value, signed?.At(cell.Key))) + refused,
            signed is null ? null : PlanDifference.Between(signed, plan).Length);
    }

    /// <summary>Whether a cell was set by hand to something else than the engine would put there.</summary>
    public static bool IsOverride(PlanCell cell) => cell is { Pin: { } pin } && !Equals(cell.Content, pin.Suggested);

    /// <summary>Orders by what is looked at first: stops, then severe findings, overrides, warnings.</summary>
    public int Before(PlanRisk other) => (other.Stops, other.Severe, other.Overrides, other.Warnings).CompareTo((Stops, Severe, Overrides, Warnings));

    private static int Count(ImmutableArray<Finding> findings, Severity severity) => findings.Count(finding => finding.Severity == severity);
}
