using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;

namespace Progression.Core.Documents;

/// <summary>A document as plain text, a line at a time; tick boxes are brackets.</summary>
public static class DocumentText
{
    /// <summary>The usual width of a line.</summary>
    public const int UsualWidth = 72;

    private const int ColumnGap = 2;

    /// <summary>The lines.</summary>
    /// <param name="document">The document.</param>
    /// <param name="width">Longest line, from 40; a word that is longer stays whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width is under 40.</exception>
    public static IEnumerable<string> Lines(Document document, int width = UsualWidth)
    {
        ArgumentNullException.ThrowIfNull(document);
        ArgumentOutOfRangeException.ThrowIfLessThan(width, 40);
        IEnumerable<string> head = [document.Title, new string('=', Math.Min(width, SafeText.Width(document.Title))), .. Wrapped(document.Mark, "", "", width)];
        return [.. head, .. document.Blocks.SelectMany(block => Lines(block, width).Prepend(""))];
    }

    private static IEnumerable<string> Lines(Block block, int width) => block switch
    {
        Block.Heading { Level: 2 } heading => [heading.Text, new string('-', Math.Min(width, SafeText.Width(heading.Text)))],
        Block.Heading heading => Wrapped(heading.Text, "", "", width),
        Block.Paragraph paragraph => Wrapped(paragraph.Text, "", "", width),
        Block.Points points => points.Items.SelectMany((item, index) => Wrapped(item, points.InOrder ? $"{(index + 1).ToString(CultureInfo.InvariantCulture),2}. " : "  - ", "    ", width)),
        Block.Ticks ticks => Ticks(ticks),
        Block.Notice notice => [$"!! {notice.Title}", .. notice.Items.SelectMany(item => Wrapped(item, "   - ", "     ", width))],
        Block.Lines lines => Enumerable.Repeat(new string('_', Math.Min(width, 60)), lines.Count),
        Block.Table table => Rows(table, width),
        Block.Picture picture => Wrapped($"[{picture.Words}]", "", "", width),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private static IEnumerable<string> Ticks(Block.Ticks ticks)
    {
        int wide = ticks.Days.Max(SafeText.Width);
        return ticks.Days.Zip(ticks.Times, (day, times) =>
            $"    {day}{new string(' ', wide - SafeText.Width(day))}  {(times == 0 ? "-" : string.Join(' ', Enumerable.Repeat("[ ]", times)))}");
    }

    private static IEnumerable<string> Rows(Block.Table table, int width)
    {
        ImmutableArray<int> widths = Widths(table, width);
        IEnumerable<ImmutableArray<string>> head = table.Head.All(cell => cell.Length == 0) ? [] : [table.Head, [.. widths.Select(wide => new string('-', wide))]];
        return head.Concat(table.Rows).SelectMany(row => Row(row, widths));
    }

    private static IEnumerable<string> Row(ImmutableArray<string> row, ImmutableArray<int> widths)
    {
        ImmutableArray<ImmutableArray<string>> cells = [.. row.Select((cell, column) => Wrapped(cell, "", "", widths[column]).ToImmutableArray())];
        return Enumerable.Range(0, Math.Max(1, cells.Max(lines => lines.Length))).Select(line => string.Join(new string(' ', ColumnGap), cells.Select((lines, column) =>
        {
            string text = line < lines.Length ? lines[line] : "";
            return text + new string(' ', Math.Max(0, widths[column] - SafeText.Width(text)));
        })).TrimEnd());
    }

    private static ImmutableArray<int> Widths(Block.Table table, int width)
    {
        int Longest(int column, Func<string, int> of) => table.Rows.Select(row => of(row[column])).Append(of(table.Head[column])).Max();
        ImmutableArray<int> wanted = [.. table.Head.Select((_, column) => Longest(column, SafeText.Width))];
        ImmutableArray<int> least = [.. table.Head.Select((_, column) => Longest(column, text => text.Split(' ').Max(SafeText.Width)))];
        int room = Math.Max(table.Head.Length, width - (ColumnGap * (table.Head.Length - 1)));
        return [.. ColumnWidths.Of([.. wanted.Select(wide => (double)wide)], [.. least.Select(wide => (double)wide)], room).Select(wide => Math.Max(1, (int)wide))];
    }

    private static IEnumerable<string> Wrapped(string text, string first, string other, int width)
    {
        string line = first;
        bool isEmpty = true;
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isEmpty && SafeText.Width(line) + 1 + SafeText.Width(word) > width)
            {
                yield return line;
                (line, isEmpty) = (other, true);
            }

            line += isEmpty ? word : $" {word}";
            isEmpty = false;
        }

        if (!isEmpty)
        {
            yield return line;
        }
    }
}
