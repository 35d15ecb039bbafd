using System.Collections.Immutable;
using Progression.Core.Documents;
using Progression.Core.Entry;

namespace Progression.Exchange.Pdf;

/// <summary>A table as pieces, one for each line of text in a row; its head stands over its rows on every page.</summary>
internal sealed class PdfTable(PdfLook look, PdfLetters letters)
{
    private const double Rule = 0.6;

    // Tables are read across, so their lines stand closer than running text.
    private const double Closer = 0.95;

    private readonly double _padding = look.TablePoints * look.TablePadding;
    private readonly double _line = look.TablePoints * look.LineSpacing * Closer;

    /// <summary>The pieces.</summary>
    internal List<PdfPiece> Of(Block.Table table)
    {
        ImmutableArray<ImmutableArray<string>> rows = [.. table.Rows.Select(row => row.Select(SafeText.OneLine).ToImmutableArray())];
        ImmutableArray<string> head = [.. table.Head.Select(SafeText.OneLine)];
        ImmutableArray<double> widths = Widths(head, rows);
        bool hasHead = head.Any(cell => cell.Length > 0);
        List<PdfPiece> top = hasHead ? Row(head, widths, bold: true) : [];
        PdfPiece? over = top.Count == 0 ? null : Whole(top);
        List<PdfPiece> pieces = [.. top.Select(piece => piece with { Tie = PdfTie.Bound })];
        foreach (ImmutableArray<string> row in rows)
        {
            List<PdfPiece> lines = Row(row, widths, bold: false);
            pieces.AddRange(lines.Select((line, index) => line with { Over = over, Tie = index < lines.Count - 1 ? PdfTie.Bound : PdfTie.Loose }));
        }

        return pieces;
    }

    private static PdfPiece Whole(List<PdfPiece> lines) => new(lines.Sum(line => line.Height), (pen, top) =>
    {
        foreach (PdfPiece line in lines)
        {
            line.Draw(pen, top);
            top += line.Height;
        }
    });

    private List<PdfPiece> Row(ImmutableArray<string> cells, ImmutableArray<double> widths, bool bold)
    {
        PdfType type = new(look.TablePoints, bold);
        ImmutableArray<IReadOnlyList<string>> texts = [.. cells.Zip(widths, (cell, width) => letters.Lines(cell, type.Size, bold, width - (2 * _padding)))];
        int count = texts.Max(lines => lines.Count);
        return [.. Enumerable.Range(0, count).Select(index =>
        {
            double above = index == 0 ? _padding : 0;
            double height = _line + above + (index == count - 1 ? _padding : 0);
            return new PdfPiece(height, (pen, top) => Draw(pen, top, (texts, widths, index), (above, height, index == 0, index == count - 1, type)));
        })];
    }

    private void Draw(PdfPen pen, double top, (ImmutableArray<IReadOnlyList<string>> Texts, ImmutableArray<double> Widths, int Index) row, (double Above, double Height, bool IsFirst, bool IsLast, PdfType Type) line)
    {
        double x = look.MarginPoints;
        pen.Line((x, top), (x, top + line.Height), Rule);
        for (int column = 0; column < row.Widths.Length; column++)
        {
            if (row.Index < row.Texts[column].Count)
            {
                pen.Text(row.Texts[column][row.Index], (x + _padding, top + line.Above), _line, line.Type);
            }

            x += row.Widths[column];
            pen.Line((x, top), (x, top + line.Height), Rule);
        }

        if (line.IsFirst)
        {
            pen.Line((look.MarginPoints, top), (x, top), Rule);
        }

        if (line.IsLast)
        {
            pen.Line((look.MarginPoints, top + line.Height), (x, top + line.Height), Rule);
        }
    }

    private ImmutableArray<double> Widths(ImmutableArray<string> head, ImmutableArray<ImmutableArray<string>> rows)
    {
        double Most(int column, Func<string, bool, double> of) => rows.Select(row => of(row[column], false)).Append(of(head[column], true)).Max() + (2 * _padding) + 0.5;
        return ColumnWidths.Of(
            [.. Enumerable.Range(0, head.Length).Select(column => Most(column, (text, bold) => letters.Width(text, look.TablePoints, bold)))],
            [.. Enumerable.Range(0, head.Length).Select(column => Most(column, (text, bold) => letters.Word(text, look.TablePoints, bold)))],
            look.Width);
    }
}
