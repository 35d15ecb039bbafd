using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Core.Drafting;

/// <summary>Drafts again. Lays a fresh draft over the plan that stands. What is done and what the therapist set by hand stays.</summary>
public static class Redraft
{
    /// <summary>A fresh draft laid over the plan that stands, or what stands in its way.</summary>
    /// <param name="standing">The plan that stands; its case and operation day are the patient's.</param>
    /// <param name="patient">The case as it is now.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="order">What is asked for beside the case.</param>
    public static Entered<PlanRevision> Of(PlanRevision standing, Case patient, ClinicalLibrary library, DraftOrder? order = null)
    {
        Entered<PlanRevision> fresh = PlanDraft.Draft(patient, library, (order ?? new DraftOrder()) with { Standing = standing });
        return fresh.Value is null ? fresh : Entered<PlanRevision>.Good(PairedWithPins(Over(standing, fresh.Value), library));
    }

    /// <summary>Where the therapist pinned the stim of a week, the contraction along with it follows the pinned stim and not the one suggested.</summary>
    private static PlanRevision PairedWithPins(PlanRevision plan, ClinicalLibrary library)
    {
        Regimen? regimen = library.Regimens.GetValueOrDefault(plan.Regimen);
        foreach (CellAddress stim in plan.Cells.Where(pair => pair.Key.Lane == Lanes.Stim && pair.Key.Week >= plan.FirstOpenWeek && pair.Value.IsPinned).Select(pair => pair.Key))
        {
            CellAddress along = stim with { Lane = Lanes.WithStim };
            if (plan.At(along) is not { Pin: null, Content: ActiveCell active } cell || !library.Exercises.TryGetValue(active.Exercise, out Exercise? exercise))
            {
                continue;
            }

            plan = plan.ContentAt(Lanes.Stim, stim.Week) is StimCell { Rung: not Rung.Stopped } pinned
                ? plan.With(along, cell with { Content = PairedWork.For(exercise, pinned, regimen) })
                : plan with { Cells = plan.Cells.Remove(along) };
        }

        return plan;
    }

    /// <summary>
    /// The fresh plan with the cells of earlier weeks as they were, and with every pinned cell kept as it is, the fresh content becoming its suggestion.
    /// A pinned cell in a week the fresh plan no longer has is dropped with its week. The stim lane stays when either plan has it.
    /// </summary>
    /// <param name="standing">The plan that stands; its case and operation day are those of the fresh one.</param>
    /// <param name="fresh">The fresh draft.</param>
    /// <exception cref="ArgumentException">The plans are of different cases or operation days.</exception>
    public static PlanRevision Over(PlanRevision standing, PlanRevision fresh)
    {
        if (standing.Code != fresh.Code || standing.Operation != fresh.Operation)
        {
            throw new ArgumentException("The plans are of different cases or operations.", nameof(fresh));
        }

        ImmutableDictionary<CellAddress, PlanCell>.Builder cells = fresh.Cells.ToBuilder();
        foreach ((CellAddress address, PlanCell cell) in standing.Cells.Where(pair => pair.Key.Week <= fresh.Weeks))
        {
            if (address.Week < fresh.FirstWeek)
            {
                cells[address] = cell;
            }
            else if (cell.Pin is { } pin)
            {
                PlanCell? own = fresh.At(address);
                cells[address] = new PlanCell(cell.Content, own?.Basis ?? cell.Basis, pin with { Suggested = own?.Content });
            }
        }

        bool stim = cells.Keys.Any(address => address.Lane is Lanes.Stim or Lanes.WithStim) || fresh.LaneOf(Lanes.Stim) is not null;
        return fresh with { Cells = cells.ToImmutable(), Lanes = Lanes.For(withStim: stim), From = Earliest(standing, fresh), OpenFrom = fresh.From };
    }

    /// <summary>A week that is partly done keeps its planned days.</summary>
    private static DateOnly Earliest(PlanRevision standing, PlanRevision fresh) =>
        standing.From < fresh.From && standing.FirstWeek < fresh.FirstWeek ? standing.From : fresh.From;
}
