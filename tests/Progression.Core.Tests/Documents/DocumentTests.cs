using System.Xml.Linq;
using Progression.Core.Documents;

namespace Progression.Core.Tests.Documents;

public sealed class DocumentTests
{
    private static readonly Document Sheet = new("Title <b>", "UNSIGNED DRAFT", false,
    [
        new Block.Heading(2, "Section"),
        new Block.Paragraph("One two three four five six seven eight nine ten eleven twelve."),
        new Block.Points(["First & last", "Second"], InOrder: true),
        new Block.Ticks(["Mon 1", "Tue 2"], [2, 0]),
        new Block.Notice("Stop if", ["it hurts <script>alert(1)</script>"]),
        new Block.Table(["Week", "Lag"], [["1", "10 deg"]]),
        new Block.Lines(2),
    ], "en");

    [Fact]
    public void As_text_nothing_is_wider_than_asked_and_boxes_can_be_ticked()
    {
        string[] lines = [.. DocumentText.Lines(Sheet, 40)];

        Assert.All(lines, line => Assert.InRange(line.Length, 0, 40));
        Assert.Equal(
        [
            "Title <b>", "=========", "UNSIGNED DRAFT", "",
            "Section", "-------", "",
            "One two three four five six seven eight", "nine ten eleven twelve.", "",
            " 1. First & last", " 2. Second", "",
            "    Mon 1  [ ] [ ]", "    Tue 2  -", "",
            "!! Stop if", "   - it hurts <script>alert(1)</script>", "",
            "Week  Lag", "----  ------", "1     10 deg", "",
            new string('_', 40), new string('_', 40),
        ], lines);
    }

    // A page without entities of its own is also XML, so an XML reader vouches for it.
    [Fact]
    public void As_html_it_is_one_page_that_fetches_nothing_and_shows_text_as_text()
    {
        string page = DocumentHtml.Page(Sheet);

        XElement html = XElement.Parse(page.Replace("<!DOCTYPE html>", "", StringComparison.Ordinal)
            .Replace("&ndash;", "-", StringComparison.Ordinal).Replace("<meta charset=\"utf-8\">", "", StringComparison.Ordinal)
            .Replace("unsafe-inline'\">", "unsafe-inline'\"/>", StringComparison.Ordinal).Replace("initial-scale=1\">", "initial-scale=1\"/>", StringComparison.Ordinal));
        Assert.Equal("en", html.Attribute("lang")!.Value);
        Assert.Empty(html.Descendants("script"));
        Assert.Equal("Title <b>", html.Descendants("h1").Single().Value);
        Assert.Equal(2, html.Descendants("span").Count(span => span.Attribute("class")!.Value == "tick"));
        Assert.Equal(2, html.Descendants("p").Count(p => p.Value == "UNSIGNED DRAFT"));
        Assert.DoesNotContain("http", page.Replace("http-equiv", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }
}
