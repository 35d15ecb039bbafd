namespace Progression.App.Imports;

/// <summary>The words for what a file holds.</summary>
internal static class ImportWords
{
    /// <summary>The kind as it stands on the screen.</summary>
    public static string Of(ImportKind kind) => kind switch
    {
        ImportKind.Measures => "a table of readings (csv)",
        ImportKind.Sessions => "a table of sessions (csv)",
        ImportKind.Plan => "a table of the plan's cells (csv)",
        _ => "a bundle of HL7 FHIR R4 (json)",
    };

    /// <summary>The kind as it is written down.</summary>
    public static string Noted(ImportKind kind) => kind == ImportKind.Fhir ? "fhir" : $"csv {kind.ToString().ToLowerInvariant()}";
}
