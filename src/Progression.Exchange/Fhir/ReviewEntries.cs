using System.Text.Json.Nodes;
using Progression.Core.Reviews;

namespace Progression.Exchange.Fhir;

/// <summary>
/// The review of the plan: a Task for what was asked for last, a Provenance for who made the revision and one for who signed it. A signature of an earlier
/// revision says nothing of this one and is left out; the plan's note tells of it.
/// </summary>
internal static class ReviewEntries
{
    public static void Add(FhirDraft draft)
    {
        ReviewStanding standing = draft.Order.Standing;
        if (standing.Plan.Revision == 0)
        {
            return;
        }

        AddTask(draft, standing);
        if (draft.Order.Saved is { } saved)
        {
            draft.Add(draft.OfPlan("provenance", "author"), FhirNode.Resource(
                "Provenance",
                ("target", FhirNode.List(FhirDraft.To(draft.Plan))),
                ("recorded", FhirNode.Instant(saved.At)),
                ("agent", FhirNode.List(Agent("author", draft.To(saved.UserId, saved.Name)))),
                ("entity", FhirNode.List(Stored(standing.Plan)))));
        }

        if (standing is { State: SignatureState.Signed, Signature: { } signed })
        {
            AddSignature(draft, signed);
        }
    }

    private static void AddSignature(FhirDraft draft, ReviewAct signed) => draft.Add(draft.OfPlan("provenance", "signature"), FhirNode.Resource(
        "Provenance",
        ("target", FhirNode.List(FhirDraft.To(draft.Plan))),
        ("recorded", FhirNode.Instant(signed.At)),
        ("reason", FhirNode.List(signed.Meaning is { } meaning ? FhirNode.Concept(SignatureWords.Of(meaning)) : null)),
        ("agent", FhirNode.List(Agent("verifier", draft.To(signed.By)))),
        ("entity", FhirNode.List(Stored(signed.Plan))),
        // No "data": an account's word for a revision in a chain of hashes, no cryptographic signature of this bundle.
        ("signature", FhirNode.List(FhirNode.Of(
            ("type", FhirNode.List(FhirNode.Coding("urn:iso-astm:E1762-95:2013", "1.2.840.10065.1.12.1.5", "Verification Signature"))),
            ("when", FhirNode.Instant(signed.At)),
            ("who", draft.To(signed.By)))))));

    private static void AddTask(FhirDraft draft, ReviewStanding standing)
    {
        ReviewAct? answer = standing.Request is null ? standing.Return ?? (standing.State == SignatureState.Signed ? standing.Signature : null) : null;
        if ((standing.Request ?? answer) is not { } last)
        {
            return;
        }

        draft.Add(draft.OfPlan("task", "review"), FhirNode.Resource(
            "Task",
            ("status", answer is null ? "requested" : "completed"),
            ("businessStatus", FhirNode.Concept(SignatureWords.Of(last.Step))),
            ("intent", "order"),
            ("code", FhirNode.Concept("Review of a plan", FhirNode.Coding(FhirSystems.Task, "review"))),
            ("focus", Reviewed(draft, last.Plan)),
            ("for", FhirDraft.To(draft.Patient)),
            ("authoredOn", answer is null ? FhirNode.Instant(last.At) : null),
            ("lastModified", FhirNode.Instant(last.At)),
            ("requester", answer is null ? draft.To(last.By) : null),
            ("owner", answer is null ? null : draft.To(answer.By))));
    }

    // A revision that is not in the bundle is named, not pointed at.
    private static JsonNode Reviewed(FhirDraft draft, ReviewedPlan plan) => plan == draft.Order.Standing.Plan
        ? FhirDraft.To(draft.Plan)
        : FhirNode.Of(("identifier", FhirNode.Identifier(FhirSystems.Plan, $"{draft.Code}/{plan.Revision}")), ("display", $"Revision {plan.Revision} of the plan"))!;

    private static JsonObject? Agent(string code, JsonNode who) => FhirNode.Of(
        ("type", FhirNode.Concept(null, FhirNode.Coding("http://terminology.hl7.org/CodeSystem/provenance-participant-type", code))),
        ("who", who));

    private static JsonObject? Stored(ReviewedPlan plan) => FhirNode.Of(
        ("role", "source"),
        ("what", FhirNode.Of(("identifier", FhirNode.Identifier(FhirSystems.Hash, plan.Hash)), ("display", $"Stored revision {plan.Revision}"))));
}
