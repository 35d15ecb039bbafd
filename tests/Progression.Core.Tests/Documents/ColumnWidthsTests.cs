using Progression.Core.Documents;

namespace Progression.Core.Tests.Documents;

public sealed class ColumnWidthsTests
{
    [Theory]
    [InlineData(30, 10, 20)]
    [InlineData(24, 8, 16)]
    [InlineData(12, 4, 8)]
    [InlineData(6, 2, 4)]
    public void Columns_share_the_room_by_what_they_want_and_never_go_under_a_word_while_there_is_room(double room, double first, double second) =>
        Assert.Equal([first, second], ColumnWidths.Of([10, 20], [4, 8], room));

    [Fact]
    public void A_table_wider_than_the_text_is_broken_inside_its_cells()
    {
        Document document = new("T", "M", true, [new Block.Table(["Name", "Value"], [["one", string.Join(' ', Enumerable.Repeat("word", 20))], ["two", "short"]])], "en");
        string[] lines = [.. DocumentText.Lines(document, 40)];

        Assert.All(lines, line => Assert.InRange(line.Length, 0, 40));
        Assert.Equal(20, lines.Sum(line => line.Split("word").Length - 1));
        Assert.Contains("two   short", lines);
    }
}
