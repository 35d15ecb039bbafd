using System.Text.Json;
using System.Text.Json.Nodes;

namespace Progression.Exchange.Fhir;

/// <summary>
/// A case with its plan as a FHIR R4 bundle of type collection: Patient, Procedure, an Observation for each reading, and where there is a plan a CarePlan with
/// a Goal for each milestone, a ServiceRequest for each stretch of stim and of an exercise, and Task and Provenance of its review. Every reference leads to an
/// entry of the bundle; no extensions. The person is a code unless a name is given.
/// </summary>
public static class FhirBundle
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true };

    /// <summary>The bundle as JSON; every character outside printable ASCII is escaped.</summary>
    public static string Text(FhirOrder order) => Of(order).ToJsonString(Indented) + "\n";

    /// <summary>The bundle.</summary>
    public static JsonObject Of(FhirOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        FhirDraft draft = new(order);
        PersonEntries.Add(draft);
        ObservationEntries.Add(draft);
        if (order.Plan is { } plan)
        {
            PlanEntries.Add(draft, plan);
            ReviewEntries.Add(draft);
        }

        return draft.Bundle();
    }
}
