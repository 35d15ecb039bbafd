namespace Progression.Exchange.Pdf;

/// <summary>How a document looks on paper. Points are of 1/72 inch.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="BodyPoints">Size of running text.</param>
/// <param name="LineSpacing">Height of a line in sizes of its text.</param>
/// <param name="MarginPoints">What is left free on all four sides.</param>
public sealed record PdfLook(PaperSize Paper, double BodyPoints, double LineSpacing, double MarginPoints)
{
    /// <summary>Size of the text in tables.</summary>
    public double TablePoints { get; init; } = BodyPoints;

    /// <summary>Room between the text of a cell and its rules, in sizes of the text.</summary>
    public double TablePadding { get; init; } = 0.4;

    /// <summary>
    /// Size down to which the text may shrink, in steps of half a point, so that the document has one page; null where it may have as many as it takes.
    /// </summary>
    public double? ShrinkTo { get; init; }

    /// <summary>Large print for a patient: 16 pt and lines one and a half high (common practice, no source).</summary>
    public static PdfLook LargePrint(PaperSize paper) => new(paper, 16, 1.5, 46);

    /// <summary>A note for a record: 11 pt.</summary>
    public static PdfLook Note(PaperSize paper) => new(paper, 11, 1.35, 54) { TablePoints = 9 };

    /// <summary>A card for a pocket: A6, as large as one page allows.</summary>
    public static PdfLook Card { get; } = new(PaperSize.A6, 9, 1.2, 15) { TablePadding = 0.2, ShrinkTo = 6 };

    /// <summary>Width and height of the paper.</summary>
    internal (double Width, double Height) Page => Paper switch
    {
        PaperSize.Letter => (612, 792),
        PaperSize.A6 => (105 * PointsPerMillimetre, 148 * PointsPerMillimetre),
        _ => (210 * PointsPerMillimetre, 297 * PointsPerMillimetre),
    };

    /// <summary>Width between the margins.</summary>
    internal double Width => Page.Width - (2 * MarginPoints);

    /// <summary>The look with smaller text.</summary>
    internal PdfLook Smaller => this with { BodyPoints = BodyPoints - 0.5, TablePoints = TablePoints - 0.5 };

    private const double PointsPerMillimetre = 72 / 25.4;
}
