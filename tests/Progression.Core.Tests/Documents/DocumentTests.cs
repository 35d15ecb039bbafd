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
    ], "en")
    {
        About = "Plan K-001",
    };

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

    [Fact]
    public void A_drawing_stands_in_the_page_with_its_words_for_whoever_cannot_see_it()
    {
        Drawing drawing = new(40, 20, [new DrawnLine([(0, 0), (40, 0), (40, 20)], IsClosed: true, 2) { IsGrey = true }, new DrawnLine([(1.26, 5), (9, 5)], IsClosed: false, 1) { IsDashed = true }], [new DrawnLabel("1", (20, 10), 10)]);
        string page = DocumentHtml.Page(Sheet with { Blocks = [new Block.Picture(drawing, "A thigh <from> the front.")] });
        XElement svg = XElement.Parse(page[page.IndexOf("<svg", StringComparison.Ordinal)..(page.IndexOf("</svg>", StringComparison.Ordinal) + 6)]);

        Assert.Equal(("0 0 40 20", "img", "A thigh <from> the front."), (svg.Attribute("viewBox")!.Value, svg.Attribute("role")!.Value, svg.Element("title")!.Value));
        Assert.Equal(("0,0 40,0 40,20", "#ccc"), (svg.Element("polygon")!.Attribute("points")!.Value, svg.Element("polygon")!.Attribute("fill")!.Value));
        Assert.Equal(("1.3,5 9,5", "none", "3"), (svg.Element("polyline")!.Attribute("points")!.Value, svg.Element("polyline")!.Attribute("fill")!.Value, svg.Element("polyline")!.Attribute("stroke-dasharray")!.Value));
        Assert.Equal("1", svg.Element("text")!.Value);
        Assert.Contains("[A thigh <from> the front.]", DocumentText.Lines(Sheet with { Blocks = [new Block.Picture(drawing, "A thigh <from> the front.")] }));
    }

    // The style may not be left by what a mark contains: CSS escapes, a backslash and the number of the letter.
    [Fact]
    public void What_is_printed_on_every_page_cannot_end_the_style()
    {
        string page = DocumentHtml.Page(Sheet with { Mark = "Signed by \"</style><b>" });

        Assert.Contains("@bottom-left{content:\"Signed\\20 by\\20 \\22 \\3c \\2f style\\3e \\3c b\\3e \\20 Title", page, StringComparison.Ordinal);
        Assert.Equal(page.IndexOf("</style>", StringComparison.Ordinal), page.LastIndexOf("</style>", StringComparison.Ordinal));
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
