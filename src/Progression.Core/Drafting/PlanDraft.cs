using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Rules;

namespace Progression.Core.Drafting;

/// <summary>Drafts a whole plan from a case. The same case, order and library give the same plan, whatever the day it is drafted on.</summary>
public static class PlanDraft
{
    /// <summary>The plan, or what stands in its way.</summary>
    public static Entered<PlanRevision> Draft(Case patient, ClinicalLibrary library, DraftOrder? order = null)
    {
        int weeks = order?.Weeks ?? patient.Weeks ?? DraftOrder.DefaultWeeks;
        string regimenId = order?.Regimen ?? patient.Regimen ?? library.DefaultRegimen;
        DateOnly from = FirstDay(patient, library);
        ImmutableArray<Problem> problems = [.. Problems(patient, library, (weeks, regimenId, from))];
        if (!problems.IsEmpty)
        {
            return Entered<PlanRevision>.Bad(problems);
        }

        StimGate gate = StimGate.Of(patient, library, from);
        DraftFacts facts = new()
        {
            Case = patient,
            Library = library,
            From = from,
            Weeks = weeks,
            Regimen = library.Regimens[regimenId],
            Gate = gate,
            Course = LadderCourse.Of(patient, library, from),
            Expected = new ExpectedCourse(patient, library, from),
            Locked = RedFlags.AnyOpen(patient, library, from),
            Standing = order?.Standing,
        };
        PlanRevision plan = new()
        {
            Code = patient.Code,
            Operation = patient.Operation.Date,
            Weeks = weeks,
            From = from,
            Regimen = regimenId,
            LibraryVersion = library.Version,
            Lanes = Lanes.For(withStim: !gate.Barred),
            Cells = ImmutableDictionary<CellAddress, PlanCell>.Empty,
            StimBarred = gate.Reasons,
        };
        return Entered<PlanRevision>.Good(Fill(plan, facts));
    }

    /// <summary>
    /// The first day a draft fills: the day the case names, else the first day on which stim may start; but never before the latest assessment, because
    /// what lies before it is done.
    /// </summary>
    public static DateOnly FirstDay(Case patient, ClinicalLibrary library)
    {
        DateOnly earliest = patient.Operation.Date.AddDays((int)library.Limit(LimitIds.StimFirstDay).Value);
        DateOnly first = patient.PlanFrom ?? earliest;
        return patient.Assessments.IsEmpty || patient.Assessments[^1].Date < first ? first : patient.Assessments[^1].Date;
    }

    /// <summary>What a plan needs and a regimen leaves open; empty for one that can be planned.</summary>
    public static ImmutableArray<string> LeftOpen(Regimen regimen)
    {
        ArgumentNullException.ThrowIfNull(regimen);
        return StimDraft.Open(regimen);
    }

    private static PlanRevision Fill(PlanRevision plan, DraftFacts facts)
    {
        Dictionary<CellAddress, PlanCell> cells = [];
        foreach (KeyValuePair<CellAddress, PlanCell> cell in TargetDraft.Cells(plan, facts)
            .Concat(facts.Gate.Barred ? [] : StimDraft.Cells(facts))
            .Concat(ActiveDraft.Cells(plan, facts)))
        {
            cells[cell.Key] = cell.Value;
        }

        PlanRevision filled = plan with { Cells = cells.ToImmutableDictionary() };
        return StimDraft.WithPairs(filled, facts);
    }

    private static IEnumerable<Problem> Problems(Case patient, ClinicalLibrary library, (int Weeks, string Regimen, DateOnly From) asked)
    {
        if (asked.Weeks is < 1 or > PostOpWeek.Longest)
        {
            yield return new Problem("weeks", "A plan cannot have that many weeks.", $"1 to {PostOpWeek.Longest} weeks", $"{asked.Weeks}");
        }

        int first = PostOpWeek.Of(patient.Operation.Date, asked.From);
        if (first < 1)
        {
            yield return new Problem("plan from", "The plan would start before the operation.", $"{LadderFacts.Day(patient.Operation.Date)} or later", LadderFacts.Day(asked.From));
        }
        else if (asked.Weeks is >= 1 and <= PostOpWeek.Longest && first > asked.Weeks)
        {
            bool possible = first <= PostOpWeek.Longest;
            yield return new Problem(
                "weeks", $"The plan would end before it starts: its first day, {LadderFacts.Day(asked.From)}, is in post-op week {first}.",
                possible ? $"{first} to {PostOpWeek.Longest} weeks" : $"a start in post-op weeks 1 to {PostOpWeek.Longest}", $"{asked.Weeks} weeks");
        }

        if (!library.Regimens.TryGetValue(asked.Regimen, out Regimen? regimen))
        {
            yield return new Problem("regimen", "There is no such regimen.", $"one of {string.Join(", ", library.Regimens.Keys)}", Found.Of(asked.Regimen));
        }
        else if (LeftOpen(regimen) is { IsEmpty: false } open)
        {
            IEnumerable<string> others = library.Regimens.Values.Where(one => LeftOpen(one).IsEmpty).Select(one => one.Id);
            yield return new Problem(
                "regimen", $"\"{regimen.Id}\" leaves open what a plan needs: {string.Join(", ", open)}.", $"a regimen that states them: {string.Join(", ", others)}", regimen.Id);
        }
    }
}
