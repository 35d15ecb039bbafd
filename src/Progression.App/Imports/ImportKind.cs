namespace Progression.App.Imports;

/// <summary>What a file of another program holds.</summary>
public enum ImportKind
{
    /// <summary>A table of readings.</summary>
    Measures,

    /// <summary>A table of sessions.</summary>
    Sessions,

    /// <summary>A table of the plan's cells.</summary>
    Plan,

    /// <summary>A bundle of HL7 FHIR R4.</summary>
    Fhir,
}
