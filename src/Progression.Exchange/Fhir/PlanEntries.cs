using System.Text.Json.Nodes;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Reviews;

namespace Progression.Exchange.Fhir;

/// <summary>The plan: its goals, its orders, and the care plan that holds them together. A plan that is not signed as it stands leaves as a draft.</summary>
internal static class PlanEntries
{
    private const string Caution = "Suggested by a program and decided by a licensed clinician; the surgeon's and local rules come first.";

    public static void Add(FhirDraft draft, PlanRevision plan)
    {
        bool signed = draft.Order.Standing.State == SignatureState.Signed;
        List<string> goals = [];
        foreach (Milestone milestone in draft.Order.Library.Milestones.Where(milestone => milestone.Week <= plan.Weeks && Due(plan, milestone) >= plan.From))
        {
            goals.Add(draft.OfPlan("goal", milestone.Id));
            draft.Add(goals[^1], Goal(draft, plan, (milestone, signed)));
        }

        List<string> orders = OrderEntries.Add(draft, plan, signed ? "active" : "draft");
        draft.Add(draft.Plan, FhirNode.Resource(
            "CarePlan",
            ("identifier", FhirNode.List(FhirNode.Identifier(FhirSystems.Plan, $"{draft.Code}/{draft.Revision}"))),
            ("status", signed ? "active" : "draft"),
            ("intent", "plan"),
            ("title", $"Knee after joint replacement: stimulation of the thigh with exercise, {plan.Weeks} weeks"),
            ("subject", FhirDraft.To(draft.Patient)),
            ("period", FhirNode.Period(plan.From, PostOpWeek.End(plan.Operation, plan.Weeks))),
            ("created", draft.Order.Saved is { } made ? FhirNode.Instant(made.At) : null),
            ("author", draft.Order.Saved is { } by ? draft.To(by.UserId, by.Name) : null),
            ("supportingInfo", FhirNode.List(FhirDraft.To(PersonEntries.Procedure(draft)))),
            ("goal", FhirNode.List(goals.Select(goal => (JsonNode?)FhirDraft.To(goal)))),
            ("activity", FhirNode.List(orders.Select(order => (JsonNode?)FhirNode.Of(("reference", FhirDraft.To(order)))))),
            ("note", FhirNode.List(Notes(draft, plan).Select(note => (JsonNode?)FhirNode.Of(("text", FhirNode.Words(note))))))));
    }

    private static IEnumerable<string> Notes(FhirDraft draft, PlanRevision plan) =>
        [SignatureWords.Of(draft.Order.Standing), Caution, .. plan.StimBarred.Select(why => $"No stim: {why}")];

    private static JsonObject Goal(FhirDraft draft, PlanRevision plan, (Milestone Milestone, bool Signed) of) => FhirNode.Resource(
        "Goal",
        ("identifier", FhirNode.List(FhirNode.Identifier(FhirSystems.Milestone, of.Milestone.Id))),
        ("lifecycleStatus", of.Signed ? "active" : "proposed"),
        ("description", FhirNode.Concept(of.Milestone.Title)),
        ("subject", FhirDraft.To(draft.Patient)),
        ("startDate", FhirNode.Day(plan.From)),
        ("target", FhirNode.List(Target(draft, plan, of.Milestone))));

    // A milestone at 2 weeks falls on day 14.
    private static DateOnly Due(PlanRevision plan, Milestone milestone) => plan.Operation.AddDays((int)(7 * milestone.Week));

    private static JsonObject? Target(FhirDraft draft, PlanRevision plan, Milestone milestone)
    {
        JsonNode due = FhirNode.Day(Due(plan, milestone));
        if (milestone is not { Measure: { } id, Target: double usual } || !draft.Order.Library.Measures.TryGetValue(id, out Measure? measure)
            || UcumUnit.Of(id, measure.Unit) is not { } unit)
        {
            return FhirNode.Of(("dueDate", due));
        }

        JsonNode bound = FhirNode.Quantity(SetByHand(plan, milestone) ?? usual, unit);
        return FhirNode.Of(
            ("measure", ObservationEntries.Measured(draft, id)),
            ("detailRange", FhirNode.Of((measure.Better == Direction.HigherIsBetter ? "low" : "high", bound))),
            ("dueDate", due));
    }

    // What the therapist set for the week of the milestone stands over the library's.
    private static double? SetByHand(PlanRevision plan, Milestone milestone) =>
        milestone.Drives && milestone.Week == Math.Floor(milestone.Week)
        && plan.Lanes.FirstOrDefault(lane => lane.Band == Band.Milestones && lane.Measure == milestone.Measure) is { } lane
        && plan.At(new CellAddress(lane.Id, (int)milestone.Week)) is { IsPinned: true, Content: TargetCell target }
            ? target.Value
            : null;
}
