using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;

namespace Progression.Core.Documents;

/// <summary>A document as plain text, a line at a time; tick boxes are brackets.</summary>
public static class DocumentText
{
    /// <summary>The usual width of a line.</summary>
    public const int UsualWidth = 72;

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
        Block.Table table => Rows(table),
        Block.Picture picture => Wrapped($"[{picture.Words}]", "", "", width),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private static IEnumerable<string> Ticks(Block.Ticks ticks)
    {
        int wide = ticks.Days.Max(SafeText.Width);
        return ticks.Days.Zip(ticks.Times, (day, times) =>
            $"    {day}{new string(' ', wide - SafeText.Width(day))}  {(times == 0 ? "-" : string.Join(' ', Enumerable.Repeat("[ ]", times)))}");
    }

    private static IEnumerable<string> Rows(Block.Table table)
    {
        ImmutableArray<int> widths = [.. table.Head.Select((head, column) => table.Rows.Select(row => SafeText.Width(row[column])).Append(SafeText.Width(head)).Max())];
        return table.Rows.Prepend([.. widths.Select(wide => new string('-', wide))]).Prepend(table.Head)
            .Select(row => string.Join("  ", row.Select((cell, column) => cell + new string(' ', widths[column] - SafeText.Width(cell)))).TrimEnd());
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
