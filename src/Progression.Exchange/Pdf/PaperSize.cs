namespace Progression.Exchange.Pdf;

/// <summary>The paper a document is printed on, upright.</summary>
public enum PaperSize
{
    /// <summary>210 x 297 mm (ISO 216).</summary>
    A4,

    /// <summary>8.5 x 11 in (ANSI/ASME Y14.1, size A).</summary>
    Letter,

    /// <summary>105 x 148 mm (ISO 216).</summary>
    A6,
}
