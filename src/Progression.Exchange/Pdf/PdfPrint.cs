namespace Progression.Exchange.Pdf;

/// <summary>A document as PDF, or why it cannot be one.</summary>
/// <param name="Bytes">The file; null exactly when <paramref name="WhyNot"/> is not.</param>
/// <param name="WhyNot">What stands in the way, in a sentence with what to do instead.</param>
public sealed record PdfPrint(byte[]? Bytes, string? WhyNot)
{
    /// <summary>How many pages it has; 0 where there is none.</summary>
    public int Pages { get; init; }

    /// <summary>The size its running text has in the end, in points.</summary>
    public double BodyPoints { get; init; }
}
