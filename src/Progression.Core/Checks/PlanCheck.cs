using System.Collections.Immutable;
using Progression.Core.Findings;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Checks;

/// <summary>Reads every rule against a plan and its case.</summary>
public static class PlanCheck
{
    private static readonly Source House = new("A cell set by hand is never overwritten, only remarked on", Standing.CommonPractice);

    /// <summary>All findings, worst first, then by first week. Nothing is kept from an earlier check, so an edit recomputes all of them.</summary>
    public static ImmutableArray<Finding> Check(Case patient, PlanRevision plan, ClinicalLibrary library)
    {
        PlanFacts facts = new(patient, plan, library);
        StimGate gate = StimGate.Of(patient, library, PlanFacts.AsOf(patient, plan));
        ImmutableArray<Finding> found =
        [
            .. gate.Findings, .. BarredButPlanned(facts, gate), .. EntryQueries(facts), .. PairingChecks.Of(facts),
            .. NeedsChecks.Of(facts), .. LoadChecks.Of(facts), .. LadderChecks.Of(facts), .. SessionChecks.Of(facts), .. StiffnessChecks.Of(facts), .. Coverage(facts),
        ];
        return [.. found.Concat(Pins(facts, found)).OrderByDescending(finding => finding.Severity).ThenBy(finding => finding.Cells.IsEmpty ? 0 : finding.Cells[0].Week)];
    }

    /// <summary>The worst severity; null when nothing was found.</summary>
    public static Severity? Worst(ImmutableArray<Finding> findings) => findings.IsEmpty ? null : findings.Max(finding => finding.Severity);

    private static IEnumerable<Finding> BarredButPlanned(PlanFacts facts, StimGate gate)
    {
        // What was done before the bar was known is no finding.
        int now = PostOpWeek.Of(facts.Plan.Operation, PlanFacts.AsOf(facts.Case, facts.Plan));
        ImmutableArray<CellAddress> stim = [.. facts.Figures.Where(week => week.StimContractions > 0 && week.Week >= now).Select(week => PlanFacts.Stim(week.Week))];
        if (gate.Barred && !stim.IsEmpty)
        {
            yield return new Finding
            {
                Rule = "STIM-BARRED",
                Severity = Severity.Stop,
                Text = $"Stim is on the plan although it is barred: {string.Join(" ", gate.Reasons)}",
                Source = gate.Findings.First(finding => finding.Severity == Severity.Stop).Source,
                Cells = stim,
                Cure = new Cure("Take stim out of these weeks", [.. stim.Select(cell => new CellChange(cell, null))]),
            };
        }
    }

    /// <summary>A lag under zero is an entry to be looked at, not a recovery.</summary>
    private static IEnumerable<Finding> EntryQueries(PlanFacts facts)
    {
        foreach (KneeState state in facts.Case.Assessments.Select(one => KneeState.At(one, facts.Case)).Where(state => state.Lag?.Degrees < 0))
        {
            yield return new Finding
            {
                Rule = "ENTRY-LAG-NEGATIVE",
                Severity = Severity.Warning,
                Text = $"{LadderFacts.Day(state.Date)}: active extension ({state.ActiveExtension}) goes further than passive ({state.PassiveExtension}); check the two readings and their signs (0 is straight, + is short of straight).",
                Inputs = [new Input("Lag", state.Lag!.ToString())],
                Source = new Source("Lag is active minus passive deficit; the unaided leg does not extend beyond its passive end", Standing.Derived),
                Cells = [new CellAddress("lag", state.Week)],
            };
        }
    }

    private static IEnumerable<Finding> Coverage(PlanFacts facts)
    {
        int ahead = facts.Plan.Weeks - facts.Plan.FirstWeek + 1;
        if (facts.Plan.FirstWeek > 1 && ahead < facts.Plan.Weeks)
        {
            yield return new Finding
            {
                Rule = "PLAN-STARTS-LATE",
                Severity = Severity.Note,
                Text = $"The plan starts in post-op week {facts.Plan.FirstWeek}: {ahead} of its {facts.Plan.Weeks} weeks lie ahead. More weeks can be asked for, up to {PostOpWeek.Longest}.",
                Source = House,
            };
        }
    }

    private static IEnumerable<Finding> Pins(PlanFacts facts, ImmutableArray<Finding> found)
    {
        foreach ((CellAddress address, PlanCell cell) in facts.Plan.Cells.Where(pair => pair.Value.IsPinned && pair.Key.Week >= facts.Plan.FirstOpenWeek).OrderBy(pair => pair.Key.Week).ThenBy(pair => pair.Key.Lane, StringComparer.Ordinal))
        {
            Lane lane = facts.Plan.LaneOf(address.Lane)!;
            if (cell.Pin!.Suggested != cell.Content)
            {
                string own = cell.Pin.Suggested is null ? "nothing" : CellNotation.Text(lane, cell.Pin.Suggested, facts.Library);
                string set = cell.Content is null ? "empty" : CellNotation.Text(lane, cell.Content, facts.Library);
                yield return Pinned("PIN-DIFFERS", Severity.Note, address, $"{lane.Title}, week {address.Week}, is pinned at {set}; the draft would put {own}." + (cell.Pin.Reason is null ? "" : $" Reason: {cell.Pin.Reason}"));
            }

            if (cell.Pin.Reason is null && found.Any(finding => finding.Severity >= Severity.Severe && finding.Cells.Contains(address)))
            {
                yield return Pinned("PIN-REASON", Severity.Warning, address, $"{lane.Title}, week {address.Week}, is pinned against a safety rule: a reason is asked for.");
            }
        }
    }

    private static Finding Pinned(string rule, Severity severity, CellAddress address, string text) => new()
    {
        Rule = rule,
        Severity = severity,
        Text = text,
        Source = House,
        Cells = [address],
        Inputs = [new Input("Set by", "hand")],
    };
}
