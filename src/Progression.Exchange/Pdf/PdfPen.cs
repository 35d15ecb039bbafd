using Progression.Core.Documents;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics.Operations;
using UglyToad.PdfPig.Graphics.Operations.General;
using UglyToad.PdfPig.Graphics.Operations.PathConstruction;
using UglyToad.PdfPig.Graphics.Operations.PathPainting;
using UglyToad.PdfPig.Graphics.Operations.SpecialGraphicsState;
using UglyToad.PdfPig.Writer;

namespace Progression.Exchange.Pdf;

/// <summary>Draws on a page. Places are told from the top left corner; a page counts from the bottom.</summary>
internal sealed class PdfPen(PdfPageBuilder page, PdfLetters letters)
{
    // Of the size of a letter, as the font's own header has them: over and under the line it stands on.
    private const double Ascent = 0.928;
    private const double Descent = 0.236;
    private const double Grey = 0.8;
    private const double CapitalsHalf = 0.36;

    /// <summary>A line of text in a box of a height: it stands in the middle.</summary>
    internal void Text(string text, (double X, double Top) at, double height, PdfType type)
    {
        if (text.Length > 0)
        {
            double foot = at.Top + ((height - ((Ascent + Descent) * type.Size)) / 2) + (Ascent * type.Size);
            page.AddText(text, type.Size, new PdfPoint(at.X, Y(foot)), letters.Of(type.Bold));
        }
    }

    /// <summary>A straight line.</summary>
    internal void Line((double X, double Y) from, (double X, double Y) to, double weight) => page.DrawLine(new PdfPoint(from.X, Y(from.Y)), new PdfPoint(to.X, Y(to.Y)), weight);

    /// <summary>An empty box.</summary>
    internal void Box((double X, double Top) at, double width, double height, double weight) =>
        page.DrawRectangle(new PdfPoint(at.X, Y(at.Top + height)), width, height, weight, false);

    /// <summary>A drawing with its top left corner at a place.</summary>
    internal void Draw(Drawing drawing, (double X, double Top) at, double scale)
    {
        List<IGraphicsStateOperation> operations = page.CurrentStream.Operations;
        operations.AddRange([Push.Value, new SetLineCap(UglyToad.PdfPig.Graphics.Core.LineCapStyle.Round), new SetLineJoin(UglyToad.PdfPig.Graphics.Core.LineJoinStyle.Round)]);
        foreach (DrawnLine line in drawing.Lines)
        {
            operations.AddRange(Path(line, at, scale));
        }

        operations.Add(Pop.Value);
        foreach (DrawnLabel label in drawing.Labels)
        {
            double size = label.Size * scale;
            double x = at.X + (label.At.X * scale) - (letters.Width(label.Text, size, bold: true) / 2);
            page.AddText(label.Text, size, new PdfPoint(x, Y(at.Top + (label.At.Y * scale) + (CapitalsHalf * size))), letters.Of(bold: true));
        }
    }

    private IEnumerable<IGraphicsStateOperation> Path(DrawnLine line, (double X, double Top) at, double scale)
    {
        double fill = line.IsGrey ? Grey : 1;
        double dash = 3 * line.Weight * scale;
        yield return new SetLineWidth(line.Weight * scale);
        yield return new SetLineDashPattern(line.IsDashed ? [dash, dash] : [], 0);
        yield return new SetNonStrokeColorDeviceGray(fill);
        foreach ((double x, double y, bool isFirst) in line.Points.Select((point, index) => (at.X + (point.X * scale), Y(at.Top + (point.Y * scale)), index == 0)))
        {
            yield return isFirst ? new BeginNewSubpath(x, y) : new AppendStraightLineSegment(x, y);
        }

        if (line.IsClosed)
        {
            yield return CloseFillPathNonZeroWindingAndStroke.Value;
        }
        else
        {
            yield return StrokePath.Value;
        }
    }

    private double Y(double fromTop) => page.PageSize.Height - fromTop;
}

/// <summary>How a text is set.</summary>
/// <param name="Size">Size of its letters in points.</param>
/// <param name="Bold">Whether they are heavy.</param>
internal sealed record PdfType(double Size, bool Bold = false);
