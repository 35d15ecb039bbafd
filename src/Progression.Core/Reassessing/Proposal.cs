using System.Collections.Immutable;
using Progression.Core.Drafting;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Reassessing;

/// <summary>
/// The cell changes the engine suggests after an assessment: a fresh draft set against the plan that stands. Weeks before the assessment's are never
/// touched; the week in which it lies changes as a whole, but what was done in it stays in the session log. Pinned cells stay as they are.
/// </summary>
public sealed record Proposal
{
    private Proposal()
    {
    }

    /// <summary>The day of the assessment it rests on.</summary>
    public required DateOnly Assessment { get; init; }

    /// <summary>The plan that stands.</summary>
    public required PlanRevision Standing { get; init; }

    /// <summary>The plan as it would be with every change.</summary>
    public required PlanRevision Fresh { get; init; }

    /// <summary>The changes by week, then lane; disagreements on pinned cells among them.</summary>
    public required ImmutableArray<ProposedChange> Changes { get; init; }

    /// <summary>What the ladder comes to at the assessment; null before the first stim session.</summary>
    public required LadderVerdict? Verdict { get; init; }

    /// <summary>The changes that can be taken: all but those of pinned cells.</summary>
    public IEnumerable<ProposedChange> Open => Changes.Where(change => !change.IsPinned);

    /// <summary>The proposal after the latest assessment of a case, or what stands in its way.</summary>
    /// <param name="standing">The plan that stands.</param>
    /// <param name="patient">The case with the new assessment.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="weeks">Weeks the plan is to have, not fewer than it has; null for as many as it has.</param>
    public static Entered<Proposal> Of(PlanRevision standing, Case patient, ClinicalLibrary library, int? weeks = null)
    {
        if (Problem(standing, patient, weeks) is { } problem)
        {
            return Entered<Proposal>.Bad(problem);
        }

        Entered<PlanRevision> fresh = Redraft.Of(standing, patient, library, new DraftOrder { Weeks = weeks ?? standing.Weeks, Regimen = standing.Regimen });
        if (fresh.Value is not { } plan)
        {
            return Entered<Proposal>.Bad(fresh.Problems);
        }

        ProposalWords words = new(patient, library, plan);
        return Entered<Proposal>.Good(new Proposal
        {
            Verdict = words.Verdict,
            Assessment = patient.Assessments[^1].Date,
            Standing = standing,
            Fresh = plan,
            Changes = [.. Differences(standing, plan, words)],
        });
    }

    /// <summary>
    /// The standing plan with the taken changes, naming the assessment. A change that goes with another is taken when that one is. Past weeks, pinned
    /// contents and what is not taken stay as they are; the plan is open from the assessment on.
    /// </summary>
    /// <param name="taken">The cells of the changes taken; none to refuse them all.</param>
    /// <param name="reason">Why; required when changes are proposed and none is taken.</param>
    /// <exception cref="ArgumentException">A cell is not one of the open changes, or everything is refused without a reason.</exception>
    public PlanRevision Accept(IReadOnlySet<CellAddress> taken, string? reason)
    {
        ArgumentNullException.ThrowIfNull(taken);
        ImmutableArray<ProposedChange> open = [.. Open];
        if (taken.Except(open.Select(change => change.Address)).Select(cell => (CellAddress?)cell).FirstOrDefault() is { } other)
        {
            throw new ArgumentException($"Nothing that can be taken is proposed for {other}.", nameof(taken));
        }

        ImmutableArray<ProposedChange> accepted = [.. open.Where(change => taken.Contains(change.With ?? change.Address))];
        PlanRevision decided = Standing with
        {
            From = Earlier(Standing.From, Fresh.From),
            OpenFrom = Standing.OpenFrom > Fresh.OpenFrom ? Standing.OpenFrom : Fresh.OpenFrom,
            Decision = PlanDecision.Of(Assessment, open.Length, accepted.Length, reason),
        };
        return accepted.IsEmpty ? decided : WithChanges(decided, accepted);
    }

    /// <summary>Every open change taken.</summary>
    public PlanRevision AcceptAll(string? reason = null) => Accept(Open.Select(change => change.Address).ToHashSet(), reason);

    private PlanRevision WithChanges(PlanRevision plan, ImmutableArray<ProposedChange> accepted)
    {
        ImmutableDictionary<CellAddress, PlanCell>.Builder cells = plan.Cells.ToBuilder();
        foreach (ProposedChange change in accepted)
        {
            cells[change.Address] = new PlanCell(change.New, change.Basis, null);
        }

        // A pin keeps its content and its reason; what the engine would put there is brought up to date.
        foreach ((CellAddress address, PlanCell cell) in Fresh.Cells.Where(pair => pair.Key.Week >= Fresh.FirstOpenWeek && pair.Value.IsPinned))
        {
            cells[address] = cell;
        }

        bool stim = Fresh.LaneOf(Lanes.Stim) is not null || cells.Keys.Any(cell => cell.Lane is Lanes.Stim or Lanes.WithStim);
        return plan with
        {
            Cells = cells.ToImmutable(),
            Weeks = Fresh.Weeks,
            Lanes = Lanes.For(withStim: stim),
            LibraryVersion = Fresh.LibraryVersion,
            StimBarred = Fresh.StimBarred,
        };
    }

    private static IEnumerable<ProposedChange> Differences(PlanRevision standing, PlanRevision fresh, ProposalWords words) =>
        from week in Enumerable.Range(fresh.FirstOpenWeek, fresh.Weeks - fresh.FirstOpenWeek + 1)
        from lane in Lanes.For(withStim: true)
        where lane.Band != Band.Checks
        let change = Difference(standing, fresh, new CellAddress(lane.Id, week), words)
        where change is not null
        select change;

    private static ProposedChange? Difference(PlanRevision standing, PlanRevision fresh, CellAddress address, ProposalWords words)
    {
        (PlanCell? old, PlanCell? now) = (standing.At(address), fresh.At(address));
        bool pinned = old is { IsPinned: true };
        CellContent? suggested = pinned ? now?.Pin?.Suggested : now?.Content;
        if (Equals(old?.Content, suggested))
        {
            return null;
        }

        CellAddress stim = address with { Lane = Lanes.Stim };
        bool follows = address.Lane == Lanes.WithStim && !pinned && standing.At(stim) is not { IsPinned: true }
            && !Equals(standing.At(stim)?.Content, fresh.At(stim)?.Content);
        Basis basis = now?.Basis ?? words.WhyEmpty(address);
        return new ProposedChange
        {
            Address = address,
            Old = old?.Content,
            New = suggested,
            Basis = basis,
            Reason = words.Reason(address, old?.Content, suggested, basis),
            Confidence = words.Confidence(address, suggested),
            IsPinned = pinned,
            With = follows ? stim : null,
        };
    }

    private static Problem? Problem(PlanRevision standing, Case patient, int? asked)
    {
        if (patient.Assessments.IsEmpty)
        {
            return new Problem("assessments", "There is no assessment to rest a proposal on.", "at least one assessment since the operation", "");
        }

        DateOnly day = patient.Assessments[^1].Date;
        int present = PostOpWeek.Of(standing.Operation, day);
        int needed = Math.Max(standing.Weeks, Math.Min(present + 1, PostOpWeek.Longest));
        int weeks = asked ?? standing.Weeks;
        return weeks >= needed ? null : new Problem(
            "weeks",
            weeks < standing.Weeks ? "A proposal takes no weeks away from a plan." : $"The assessment of {LadderFacts.Day(day)} lies in week {present}, and the plan has no week after it. Ask for more weeks.",
            $"{needed} to {PostOpWeek.Longest} weeks", $"{weeks}");
    }

    private static DateOnly Earlier(DateOnly one, DateOnly other) => one < other ? one : other;
}
