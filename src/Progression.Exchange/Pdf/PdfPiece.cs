namespace Progression.Exchange.Pdf;

/// <summary>How firmly a piece holds on to the one after it when a page is full.</summary>
internal enum PdfTie
{
    /// <summary>The page may end after it.</summary>
    Loose,

    /// <summary>It stays with the next one where both fit on one page: an exercise with its boxes.</summary>
    Kept,

    /// <summary>It stays with the next one: a heading with its text.</summary>
    Bound,
}

/// <summary>What is laid on a page in one go: a line of text, a row of boxes, a picture.</summary>
/// <param name="Height">How high it is.</param>
/// <param name="Draw">Draws it with its top at a height.</param>
internal sealed record PdfPiece(double Height, Action<PdfPen, double> Draw)
{
    /// <summary>How it holds on to the next.</summary>
    internal PdfTie Tie { get; init; }

    /// <summary>Whether it is only room between two others, left out at the top of a page.</summary>
    internal bool IsGap { get; init; }

    /// <summary>What is drawn over it once more where a page begins with it: the head of a table.</summary>
    internal PdfPiece? Over { get; init; }

    /// <summary>Room between two others.</summary>
    internal static PdfPiece Gap(double height) => new(height, (_, _) => { }) { IsGap = true };
}
