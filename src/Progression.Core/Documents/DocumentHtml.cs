using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using Progression.Core.Entry;

namespace Progression.Core.Documents;

/// <summary>
/// A document as one HTML page that needs nothing else: no script, no file from anywhere; a picture is drawn in the page itself. Usually large print: letters
/// of 16 pt; lines one and a half high, left-aligned, without serifs (common practice, no source). It prints on A4 and Letter.
/// </summary>
public static class DocumentHtml
{
    // The policy of the page itself: nothing is fetched, whatever a text may contain.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'";

    private const string Style = """
        h1{font-size:1.5em;margin:0}h2{font-size:1.25em;border-bottom:2px solid}h3{font-size:1em;margin:1.2em 0 0}
        h2,h3,h2+p{break-after:avoid}ol,ul{margin:.6em 0}.mark{font-weight:bold}.unsigned{border:4px solid;padding:.5em;font-size:1.2em}
        table{border-collapse:collapse}td,th{border:1px solid;padding:.2em .5em;text-align:left;vertical-align:top}tr{break-inside:avoid}
        .ticks{table-layout:fixed;width:100%}.ticks th{font-weight:normal;padding:.2em}.tick{display:inline-block;width:.9em;height:.9em;border:2px solid;margin-right:.3em;vertical-align:middle}
        .figures{overflow-x:auto;font-size:.85em}.notice{border:3px solid;padding:.2em 1em;margin:1em 0;break-inside:avoid}.notice h2{border:0;margin:.2em 0}
        .line{border-bottom:1px solid;height:2em}.part{break-inside:avoid}figure{margin:1em 0 0;break-inside:avoid;break-after:avoid}figure+ol{break-inside:avoid}
        svg{width:11em;max-width:100%}
        @media print{body{padding:0}.figures{overflow:visible}}
        """;

    /// <summary>Size of the letters for a patient, in points.</summary>
    public const double LargePrint = 16;

    /// <summary>The page.</summary>
    /// <param name="document">The document.</param>
    /// <param name="points">Size of running text.</param>
    public static string Page(Document document, double points = LargePrint)
    {
        ArgumentNullException.ThrowIfNull(document);
        StringBuilder page = new();
        string mark = $"<p class=\"mark{(document.IsSigned ? "" : " unsigned")}\">{Text(document.Mark)}</p>\n";
        page.Append(CultureInfo.InvariantCulture, $"""
            <!DOCTYPE html>
            <html lang="{Text(document.Language)}">
            <head>
            <meta charset="utf-8">
            <meta http-equiv="Content-Security-Policy" content="{Policy}">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>{Text(document.Title)}</title>
            <style>
            {Look(document, points)}
            {Style}
            </style>
            </head>
            <body>
            <h1>{Text(document.Title)}</h1>

            """);
        // The mark once more at the end, for a page that is torn off or scrolled away from the first.
        return page.Append(mark).Append(Body(document.Blocks)).Append(mark).Append("</body>\n</html>\n").ToString();
    }

    // A browser that knows boxes in the margins prints the mark and the number on every page.
    private static string Look(Document document, double points)
    {
        string foot = $"{document.Mark} {document.Title}. {document.About}";
        return FormattableString.Invariant($"body{{font:{points}pt/1.5 sans-serif;margin:0 auto;padding:1rem;max-width:44rem;color:#000;background:#fff}}\n")
            + $"@page{{margin:15mm 15mm 22mm;@bottom-left{{content:\"{Quoted(foot)}\";font:bold 9pt sans-serif;width:80%}}@bottom-right{{content:counter(page) \" / \" counter(pages);font:bold 9pt sans-serif}}}}";
    }

    // A text inside the style, whatever it contains: all but letters and figures as their numbers, as CSS has it.
    private static string Quoted(string text) => string.Concat(SafeText.OneLine(text).EnumerateRunes()
        .Select(rune => char.IsAsciiLetterOrDigit((char)Math.Min(rune.Value, char.MaxValue)) ? rune.ToString() : FormattableString.Invariant($"\\{rune.Value:x} ")));

    // What stands under a heading of the third level stays on one page with it, if it can: an exercise with its boxes.
    private static string Body(ImmutableArray<Block> blocks)
    {
        StringBuilder body = new();
        bool isOpen = false;
        foreach (Block block in blocks)
        {
            bool begins = block is Block.Heading { Level: 3 };
            body.Append(isOpen && block is Block.Heading or Block.Notice ? "</section>\n" : "").Append(begins ? "<section class=\"part\">" : "").Append(Of(block)).Append('\n');
            isOpen = begins || (isOpen && block is not (Block.Heading or Block.Notice));
        }

        return body.Append(isOpen ? "</section>\n" : "").ToString();
    }

    private static string Of(Block block) => block switch
    {
        Block.Heading heading => string.Create(CultureInfo.InvariantCulture, $"<h{heading.Level}>{Text(heading.Text)}</h{heading.Level}>"),
        Block.Paragraph paragraph => $"<p>{Text(paragraph.Text)}</p>",
        Block.Points points => points.InOrder ? $"<ol>{Items(points.Items)}</ol>" : $"<ul>{Items(points.Items)}</ul>",
        Block.Ticks ticks => Ticks(ticks),
        Block.Notice notice => $"<section class=\"notice\"><h2>{Text(notice.Title)}</h2><ul>{Items(notice.Items)}</ul></section>",
        Block.Picture picture => $"<figure>{DrawingSvg.Of(picture.Drawing, picture.Words)}</figure>",
        Block.Lines lines => string.Concat(Enumerable.Repeat("<div class=\"line\"></div>", lines.Count)),
        Block.Table table => $"<div class=\"figures\"><table>{Head(table.Head)}<tbody>{string.Concat(table.Rows.Select(row => $"<tr>{Cells("td", row)}</tr>"))}</tbody></table></div>",
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private static string Ticks(Block.Ticks ticks) =>
        $"<table class=\"ticks\"><tr>{Cells("th", ticks.Days)}</tr><tr>{string.Concat(ticks.Times.Select(times => $"<td>{Boxes(times)}</td>"))}</tr></table>";

    // A head of its own is printed again over the rows on each page.
    private static string Head(ImmutableArray<string> cells) => cells.All(cell => cell.Length == 0) ? "" : $"<thead><tr>{Cells("th", cells)}</tr></thead>";

    private static string Boxes(int times) => times == 0 ? "&ndash;" : string.Concat(Enumerable.Repeat("<span class=\"tick\"></span>", times));

    private static string Items(ImmutableArray<string> items) => string.Concat(items.Select(item => $"<li>{Text(item)}</li>"));

    private static string Cells(string tag, ImmutableArray<string> cells) => string.Concat(cells.Select(cell => $"<{tag}>{Text(cell)}</{tag}>"));

    private static string Text(string text) => WebUtility.HtmlEncode(SafeText.OneLine(text));
}
