using System.Text.Json.Nodes;
using Progression.Core.Reviews;

namespace Progression.Exchange.Fhir;

/// <summary>
/// The review of the plan: a Task for the latest request, a Provenance for who made the revision and one for who signed it. A signature of an earlier revision
/// says nothing of this one and is left out; the plan's note tells of it.
/// </summary>
internal static class ReviewEntries
{
    public static void Add(FhirDraft draft)
    {
        if (draft.Order.Stamp is not { } stamp)
        {
            return;
        }

        AddTask(draft);
        draft.Add(draft.OfPlan("provenance", "author"), FhirNode.Resource(
            "Provenance",
            ("target", FhirNode.List(FhirDraft.To(draft.Plan))),
            ("recorded", FhirNode.Instant(stamp.At)),
            ("agent", FhirNode.List(Agent("author", draft.To(stamp.UserId, stamp.Name)))),
            ("entity", FhirNode.List(Stored(stamp)))));
        if (draft.Order.Standing is { State: SignatureState.Signed, Signature: { } signed })
        {
            AddSignature(draft, stamp, signed);
        }
    }

    private static void AddSignature(FhirDraft draft, PlanStamp stamp, ReviewAct signed) => draft.Add(draft.OfPlan("provenance", "signature"), FhirNode.Resource(
        "Provenance",
        ("target", FhirNode.List(FhirDraft.To(draft.Plan))),
        ("recorded", FhirNode.Instant(signed.At)),
        ("reason", FhirNode.List(signed.Meaning is { } meaning ? FhirNode.Concept(SignatureWords.Of(meaning)) : null)),
        ("agent", FhirNode.List(Agent("verifier", draft.To(signed.By)))),
        ("entity", FhirNode.List(Stored(stamp))),
        // No "data": an account's word for a revision in a chain of hashes, no cryptographic signature of this bundle.
        ("signature", FhirNode.List(FhirNode.Of(
            ("type", FhirNode.List(FhirNode.Coding("urn:iso-astm:E1762-95:2013", "1.2.840.10065.1.12.1.5", "Verification Signature"))),
            ("when", FhirNode.Instant(signed.At)),
            ("who", draft.To(signed.By)))))));

    private static void AddTask(FhirDraft draft)
    {
        if (draft.Order.Review.Acts.LastOrDefault(act => act.Step == ReviewStep.Requested) is not { } request)
        {
            return;
        }

        ReviewAct? answer = draft.Order.Review.Acts.Skip(draft.Order.Review.Acts.LastIndexOf(request) + 1).LastOrDefault(act => act.Step != ReviewStep.Commented);
        draft.Add(draft.OfPlan("task", "review"), FhirNode.Resource(
            "Task",
            ("status", answer is null ? "requested" : answer.Step == ReviewStep.Withdrawn ? "cancelled" : "completed"),
            ("businessStatus", answer is null ? null : FhirNode.Concept(SignatureWords.Of(answer.Step))),
            ("intent", "order"),
            ("code", FhirNode.Concept("Review of a plan", FhirNode.Coding(FhirSystems.Task, "review"))),
            ("focus", Reviewed(draft, request.Plan)),
            ("for", FhirDraft.To(draft.Patient)),
            ("authoredOn", FhirNode.Instant(request.At)),
            ("lastModified", FhirNode.Instant((answer ?? request).At)),
            ("requester", draft.To(request.By)),
            ("owner", answer is null or { Step: ReviewStep.Withdrawn } ? null : draft.To(answer.By))));
    }

    // A revision that is not in the bundle is named, not pointed at.
    private static JsonNode Reviewed(FhirDraft draft, ReviewedPlan plan) => plan == draft.Order.Standing.Plan
        ? FhirDraft.To(draft.Plan)
        : FhirNode.Of(("identifier", FhirNode.Identifier(FhirSystems.Plan, $"{draft.Code}/{plan.Revision}")), ("display", $"Revision {plan.Revision} of the plan"))!;

    private static JsonObject? Agent(string code, JsonNode who) => FhirNode.Of(
        ("type", FhirNode.Concept(null, FhirNode.Coding("http://terminology.hl7.org/CodeSystem/provenance-participant-type", code))),
        ("who", who));

    private static JsonObject? Stored(PlanStamp stamp) => FhirNode.Of(
        ("role", "source"),
        ("what", FhirNode.Of(("identifier", FhirNode.Identifier(FhirSystems.Hash, stamp.Hash)), ("display", $"Stored revision {stamp.Revision}"))));
}
