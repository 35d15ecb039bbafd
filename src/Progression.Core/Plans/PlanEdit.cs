using Progression.Core.Findings;
using Progression.Core.Library;

namespace Progression.Core.Plans;

/// <summary>Changing a plan by hand. Each function gives another plan; the one handed in stays as it was.</summary>
public static class PlanEdit
{
    private static readonly Basis ByHand = new(
        "PLAN-BY-HAND", "The therapist put this here; the draft left the cell empty.", [], [],
        new Source("the therapist who wrote it", Standing.CommonPractice), "Taking the pin off gives the cell back to the draft.");

    /// <summary>Why a cell cannot be edited; null when it can.</summary>
    public static string? WhyNot(PlanRevision plan, CellAddress address)
    {
        Lane? lane = plan.LaneOf(address.Lane);
        return lane is null ? $"The plan has no lane \"{address.Lane}\"."
            : address.Week < 1 || address.Week > plan.Weeks ? $"The plan has weeks 1 to {plan.Weeks}."
            : lane.Band == Band.Checks ? "This lane is computed from the others."
            : address.Week < plan.FirstOpenWeek ? $"Week {address.Week} lies before the plan's first day that can be changed: what is done is done."
            : null;
    }

    /// <summary>The plan with a content put in by hand, which pins the cell.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="address">The cell; <see cref="WhyNot"/> is null for it.</param>
    /// <param name="content">The content; null empties the cell and keeps it empty.</param>
    /// <param name="reason">Why; null for no reason given.</param>
    /// <exception cref="ArgumentException">The cell cannot be edited.</exception>
    public static PlanRevision Set(PlanRevision plan, CellAddress address, CellContent? content, string? reason = null)
    {
        ThrowIfNotEditable(plan, address);
        PlanCell? before = plan.At(address);
        CellContent? suggested = before?.Pin is { } pin ? pin.Suggested : before?.Content;
        return plan.With(address, new PlanCell(content, before?.Basis ?? ByHand, new Pin(suggested, reason)));
    }

    /// <summary>The plan with all the changes of a cure, each pinned.</summary>
    /// <exception cref="ArgumentException">One of the cells cannot be edited.</exception>
    public static PlanRevision Apply(PlanRevision plan, Cure cure) =>
        cure.Changes.Aggregate(plan, (next, change) => Set(next, change.Address, change.Content, $"Cure taken: {cure.Text}"));

    /// <summary>The plan with a cell given back to the engine: its own suggestion stands again. A cell that is not pinned stays as it is.</summary>
    public static PlanRevision Unpin(PlanRevision plan, CellAddress address) =>
        plan.At(address) is { Pin: { } pin } cell ? plan.With(address, cell with { Content = pin.Suggested, Pin = null }) : plan;

    /// <summary>The plan with the reason of a pinned cell set. A cell that is not pinned stays as it is.</summary>
    public static PlanRevision WithReason(PlanRevision plan, CellAddress address, string reason) =>
        plan.At(address) is { Pin: { } pin } cell ? plan.With(address, cell with { Pin = pin with { Reason = reason } }) : plan;

    private static void ThrowIfNotEditable(PlanRevision plan, CellAddress address)
    {
        if (WhyNot(plan, address) is { } whyNot)
        {
            throw new ArgumentException(whyNot, nameof(address));
        }
    }
}
