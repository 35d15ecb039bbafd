using System.Text.Json.Nodes;
using Firely.Fhir.Validation;
using Hl7.Fhir.Model;
using Hl7.Fhir.Serialization;
using Hl7.Fhir.Specification.Source;
using Hl7.Fhir.Specification.Terminology;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>The first validator: the Firely parser and validator with HL7's definitions of R4, offline. Only errors count; advice does not.</summary>
internal static class FirelyOracle
{
    // The first validation reads the definitions and takes seconds; every one after it milliseconds.
    private static readonly Validator Validator = Make();

    /// <summary>What is wrong with a bundle; empty when nothing is.</summary>
    public static IReadOnlyList<string> Errors(JsonNode bundle)
    {
        if (!new FhirJsonDeserializer().TryDeserializeResource(bundle.ToJsonString(), out Resource? read, out IEnumerable<Hl7.Fhir.Utility.CodedException> faults))
        {
            return [.. faults.Select(fault => "parse: " + fault.Message)];
        }

        OperationOutcome outcome = Validator.Validate(read!);
        return [.. outcome.Issue.Where(issue => issue.Severity is OperationOutcome.IssueSeverity.Error or OperationOutcome.IssueSeverity.Fatal).Select(issue => $"{issue.Expression.FirstOrDefault()}: {issue.Details?.Text}")];
    }

    /// <summary>The bundle as the parser writes it again.</summary>
    public static JsonNode Again(JsonNode bundle) => JsonNode.Parse(new FhirJsonSerializer().SerializeToString(new FhirJsonDeserializer().DeserializeResource(bundle.ToJsonString())))!;

    private static Validator Make()
    {
        CachedResolver resolver = new(ZipSource.CreateValidationSource());
        return new Validator(resolver, new LocalTerminologyService(resolver));
    }
}
