using System.Collections.Immutable;
using System.Globalization;
using System.Net;
using System.Text;
using Progression.Core.Entry;

namespace Progression.Core.Documents;

/// <summary>
/// A document as one HTML page that needs nothing else: no script, no file from anywhere; a picture is drawn in the page itself. Large print: letters of
/// 16 pt and lines one and a half high, left-aligned, without serifs (common practice, no source). It prints on A4 and Letter.
/// </summary>
public static class DocumentHtml
{
    // The policy of the page itself: nothing is fetched, whatever a text may contain.
    private const string Policy = "default-src 'none'; style-src 'unsafe-inline'";

    private const string Style = """
        body{font:16pt/1.5 sans-serif;margin:0 auto;padding:1rem;max-width:44rem;color:#000;background:#fff}
        h1{font-size:1.5em;margin:0}h2{font-size:1.25em;border-bottom:2px solid}h3{font-size:1em;margin:1.2em 0 0}
        h2,h3{break-after:avoid}ol,ul{margin:.3em 0}.mark{font-weight:bold}.unsigned{border:4px solid;padding:.5em;font-size:1.2em}
        table{border-collapse:collapse}td,th{border:1px solid;padding:.2em .5em;text-align:left}.tick{display:inline-block;width:.9em;height:.9em;border:2px solid;margin-right:.3em;vertical-align:middle}
        .notice{border:3px solid;padding:.2em 1em;margin:1em 0;break-inside:avoid}.notice h2{border:0;margin:.2em 0}.line{border-bottom:1px solid;height:2em}
        .part{break-inside:avoid}figure{margin:1em 0;break-inside:avoid}svg{width:20em;max-width:100%}@page{margin:15mm}@media print{body{padding:0}}
        """;

    /// <summary>The page.</summary>
    public static string Page(Document document)
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
            <style>{Style}</style>
            </head>
            <body>
            <h1>{Text(document.Title)}</h1>

            """);
        // The mark once more at the end, for a page that is torn off or scrolled away from the first.
        return page.Append(mark).Append(Body(document.Blocks)).Append(mark).Append("</body>\n</html>\n").ToString();
    }

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
        Block.Table table => $"<table><tr>{Cells("th", table.Head)}</tr>{string.Concat(table.Rows.Select(row => $"<tr>{Cells("td", row)}</tr>"))}</table>",
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private static string Ticks(Block.Ticks ticks) =>
        $"<table><tr>{Cells("th", ticks.Days)}</tr><tr>{string.Concat(ticks.Times.Select(times => $"<td>{Boxes(times)}</td>"))}</tr></table>";

    private static string Boxes(int times) => times == 0 ? "&ndash;" : string.Concat(Enumerable.Repeat("<span class=\"tick\"></span>", times));

    private static string Items(ImmutableArray<string> items) => string.Concat(items.Select(item => $"<li>{Text(item)}</li>"));

    private static string Cells(string tag, ImmutableArray<string> cells) => string.Concat(cells.Select(cell => $"<{tag}>{Text(cell)}</{tag}>"));

    private static string Text(string text) => WebUtility.HtmlEncode(SafeText.OneLine(text));
}
