using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Progression.Core.Entry;

namespace Progression.Core.Documents;

/// <summary>A document as Markdown: CommonMark 0.31 with the tables and tick boxes that are widely understood. What a text contains stays text.</summary>
public static class DocumentMarkdown
{
    // Every sign that can begin or mark something, wherever it stands (CommonMark: a backslash before ASCII punctuation makes it literal).
    private const string Signs = "\\`*_[]<>|~&";

    /// <summary>The lines.</summary>
    public static IEnumerable<string> Lines(Document document)
    {
        ArgumentNullException.ThrowIfNull(document);
        string mark = document.IsSigned ? Text(document.Mark) : $"**{Text(document.Mark)}**";
        IEnumerable<string> about = document.About is { } named ? ["", Text(named)] : [];
        return [$"# {Text(document.Title)}", "", mark, .. about, .. document.Blocks.SelectMany(block => Lines(block).Prepend("")), "", mark];
    }

    private static IEnumerable<string> Lines(Block block) => block switch
    {
        Block.Heading heading => [$"{new string('#', heading.Level)} {Text(heading.Text)}"],
        Block.Paragraph paragraph => [Text(paragraph.Text)],
        Block.Points points => points.Items.Select((item, index) => (points.InOrder ? $"{(index + 1).ToString(CultureInfo.InvariantCulture)}. " : "- ") + Text(item)),
        Block.Ticks ticks => ticks.Days.Zip(ticks.Times, (day, times) => $"- {Text(day)}: {(times == 0 ? "none" : string.Join(' ', Enumerable.Repeat("\\[ \\]", times)))}"),
        Block.Notice notice => [$"> **{Text(notice.Title)}**", ">", .. notice.Items.Select(item => $"> - {Text(item)}")],
        Block.Lines lines => Enumerable.Range(1, (2 * lines.Count) - 1).Select(line => line % 2 == 0 ? "" : "\\_\\_\\_\\_\\_\\_\\_\\_"),
        Block.Table table => [Row(table.Head), Row([.. table.Head.Select(_ => "---")], isRule: true), .. table.Rows.Select(row => Row(row))],
        Block.Picture picture => [$"*{Text(picture.Words)}*"],
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private static string Row(ImmutableArray<string> cells, bool isRule = false) => $"| {string.Join(" | ", cells.Select(cell => isRule ? cell : Text(cell)))} |";

    private static string Text(string text)
    {
        StringBuilder safe = new();
        string line = SafeText.OneLine(text);
        for (int at = 0; at < line.Length; at++)
        {
            bool begins = at == 0 && line[at] is '#' or '-' or '+' or '=';
            bool numbers = at > 0 && line[at] is '.' or ')' && line.AsSpan(0, at).IndexOfAnyExceptInRange('0', '9') < 0;
            safe.Append(begins || numbers || Signs.Contains(line[at], StringComparison.Ordinal) ? "\\" : "").Append(line[at]);
        }

        return safe.ToString();
    }
}
