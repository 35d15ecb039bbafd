using System.Globalization;
using System.Net;
using System.Text;

namespace Progression.Core.Documents;

/// <summary>A drawing as SVG 1.1 that stands inside a page of HTML, which needs no name space: black, white and grey alone, and it fetches nothing.</summary>
public static class DrawingSvg
{
    /// <summary>The element.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="words">What it shows, for whoever cannot see it.</param>
    public static string Of(Drawing drawing, string words)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        ArgumentNullException.ThrowIfNull(words);
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<svg viewBox=\"0 0 {Figure(drawing.Width)} {Figure(drawing.Height)}\" role=\"img\">");
        svg.Append(CultureInfo.InvariantCulture, $"<title>{WebUtility.HtmlEncode(words)}</title>");
        foreach (DrawnLine line in drawing.Lines)
        {
            string points = string.Join(' ', line.Points.Select(point => $"{Figure(point.X)},{Figure(point.Y)}"));
            string fill = !line.IsClosed ? "none" : line.IsGrey ? "#ccc" : "#fff";
            string dash = line.IsDashed ? $" stroke-dasharray=\"{Figure(3 * line.Weight)}\"" : "";
            svg.Append(CultureInfo.InvariantCulture, $"<{(line.IsClosed ? "polygon" : "polyline")} points=\"{points}\" fill=\"{fill}\" stroke=\"#000\" stroke-width=\"{Figure(line.Weight)}\" stroke-linejoin=\"round\" stroke-linecap=\"round\"{dash}/>");
        }

        foreach (DrawnLabel label in drawing.Labels)
        {
            // 0.36 of the body from the middle to the foot of a figure: about half the height of its capitals.
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Figure(label.At.X)}\" y=\"{Figure(label.At.Y + (0.36 * label.Size))}\" font-size=\"{Figure(label.Size)}\" font-weight=\"bold\" text-anchor=\"middle\">{WebUtility.HtmlEncode(label.Text)}</text>");
        }

        return svg.Append("</svg>").ToString();
    }

    private static string Figure(double value) => Math.Round(value, 1).ToString("0.#", CultureInfo.InvariantCulture);
}
