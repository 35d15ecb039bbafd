using Progression.Core.People;

namespace Progression.Exchange.Fhir;

/// <summary>The person and the operation.</summary>
internal static class PersonEntries
{
    public static void Add(FhirDraft draft)
    {
        Case patient = draft.Order.Patient;
        draft.Add(draft.Patient, FhirNode.Resource(
            "Patient",
            ("identifier", FhirNode.List(FhirNode.Identifier(FhirSystems.Case, draft.Code))),
            ("name", FhirNode.List(FhirNode.Of(("text", FhirNode.Words(draft.Order.Name))))),
            ("birthDate", draft.Order.WithBirthDate && patient.Born is DateOnly born ? FhirNode.Day(born) : null)));
        draft.Add(Procedure(draft), FhirNode.Resource(
            "Procedure",
            ("status", "completed"),
            ("code", FhirNode.Concept(patient.Operation.Procedure) ?? FhirNode.Concept("Operation of the knee")),
            ("subject", FhirDraft.To(draft.Patient)),
            ("performedDateTime", FhirNode.Day(patient.Operation.Date)),
            ("bodySite", FhirNode.List(FhirNode.Concept(draft.Knee)))));
    }

    /// <summary>The name of the operation's entry.</summary>
    public static string Procedure(FhirDraft draft) => draft.OfCase("procedure", "operation");
}
