using Progression.Core.Documents;

namespace Progression.Core.Tests.Documents;

public sealed class DocumentMarkdownTests
{
    // CommonMark 0.31: a backslash before ASCII punctuation makes it literal; tables as in its wide-spread addition.
    [Fact]
    public void Parts_become_marks_and_what_a_text_contains_stays_text()
    {
        Document document = new("Note *1*", "UNSIGNED DRAFT", false,
        [
            new Block.Heading(2, "Part"), new Block.Paragraph("# no <b>heading</b> | cell_name"), new Block.Paragraph("1. no list"),
            new Block.Points(["one", "- two"], InOrder: false), new Block.Points(["first"], InOrder: true), new Block.Ticks(["Mon", "Tue"], [2, 0]),
            new Block.Notice("Stop", ["it hurts"]), new Block.Table(["A", "B"], [["1 | 2", "x"]]), new Block.Lines(2),
        ], "en");

        Assert.Equal(
        [
            "# Note \\*1\\*", "", "**UNSIGNED DRAFT**", "", "## Part", "", "\\# no \\<b\\>heading\\</b\\> \\| cell\\_name", "", "1\\. no list", "",
            "- one", "- \\- two", "", "1. first", "", "- Mon: \\[ \\] \\[ \\]", "- Tue: none", "", "> **Stop**", ">", "> - it hurts", "",
            "| A | B |", "| --- | --- |", "| 1 \\| 2 | x |", "", "\\_\\_\\_\\_\\_\\_\\_\\_", "", "\\_\\_\\_\\_\\_\\_\\_\\_", "", "**UNSIGNED DRAFT**",
        ], DocumentMarkdown.Lines(document));
    }
}
