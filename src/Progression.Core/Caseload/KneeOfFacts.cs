using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.People;

namespace Progression.Core.Caseload;

/// <summary>The case again, as far as the red flags read it, so that a list judges them by the same rules as a plan does.</summary>
internal static class KneeOfFacts
{
    private static readonly CaseCode Nobody = CaseCode.Parse("LISTED")!;

    internal static Case Of(CaseFacts facts) => new()
    {
        Code = Nobody,
        Operation = new Operation(facts.Operation, Side.Left, ""),
        Screening = facts.Screening,
        Assessments = [.. facts.Visits.Select(visit => Visit(facts, visit))],
        FlagNotes = facts.Notes,
        Sessions = facts.Stimulated ? [new SessionLog(facts.FirstTreated ?? facts.Operation, 1)] : [],
    };

    private static Assessment Visit(CaseFacts facts, VisitFacts visit)
    {
        (string Measure, double? Value)[] read =
        [
            (MeasureIds.FlexionActive, visit.FlexionActive), (MeasureIds.FlexionPassive, visit.FlexionPassive), (MeasureIds.ExtensionActive, visit.ExtensionActive),
            (MeasureIds.ExtensionPassive, visit.ExtensionPassive), (MeasureIds.StraightLegRaises, visit.StraightLegRaises),
        ];
        return new Assessment(
            facts.Operation.AddDays(visit.Day),
            read.Where(one => one.Value is not null).ToImmutableSortedDictionary(one => one.Measure, one => new Reading(one.Measure, one.Value!.Value), StringComparer.Ordinal),
            facts.Signs.Zip(visit.Answers).Where(one => one.Second != '-').ToImmutableSortedDictionary(
                one => one.First, one => one.Second switch { 'y' => Answer.Yes, 'n' => Answer.No, _ => Answer.Unknown }, StringComparer.Ordinal));
    }
}
