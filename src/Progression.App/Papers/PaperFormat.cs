namespace Progression.App.Papers;

/// <summary>How something that leaves the workbook is written.</summary>
public enum PaperFormat
{
    /// <summary>Plain text.</summary>
    Text,

    /// <summary>Plain text with marks for headings, points and tables.</summary>
    Markdown,

    /// <summary>A page for a browser.</summary>
    Html,

    /// <summary>Pages to print.</summary>
    Pdf,

    /// <summary>A drawing of lines, sharp at any size.</summary>
    Svg,

    /// <summary>A picture of points.</summary>
    Png,

    /// <summary>A table after RFC 4180.</summary>
    Csv,

    /// <summary>A calendar after RFC 5545.</summary>
    Calendar,

    /// <summary>A bundle of resources of HL7 FHIR R4 as JSON.</summary>
    Fhir,
}
