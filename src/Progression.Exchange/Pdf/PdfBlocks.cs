using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Documents;
using Progression.Core.Entry;

namespace Progression.Exchange.Pdf;

/// <summary>The parts of a document as pieces to be laid on pages.</summary>
internal sealed class PdfBlocks(PdfLook look, PdfLetters letters)
{
    private const double TitleShare = 1.5;
    private const double SectionShare = 1.25;
    private const double MarkShare = 1.2;
    private const double Gutter = 2;
    private const double PictureShare = 0.5;
    private const double Rule = 0.8;

    // Of the size of the text in the frame.
    private const double HeavyFrame = 0.2;
    private const double LightFrame = 0.13;
    private const double BoxWeight = 1.3;

    private readonly double _left = look.MarginPoints;
    private readonly double _gap = look.BodyPoints * 0.5;

    /// <summary>The pieces from the title to the last part.</summary>
    internal ImmutableArray<PdfPiece> Of(Document document)
    {
        ImmutableArray<PdfPiece>.Builder pieces = ImmutableArray.CreateBuilder<PdfPiece>();
        pieces.AddRange(Tied(Text(document.Title, TypeOf(TitleShare)), PdfTie.Bound));
        pieces.Add(PdfPiece.Gap(_gap / 2) with { Tie = PdfTie.Bound });
        pieces.AddRange(document.IsSigned ? Text(document.Mark, TypeOf(1)) : Framed([(document.Mark, TypeOf(MarkShare), 0)], HeavyFrame));
        bool inPart = false;
        for (int index = 0; index < document.Blocks.Length; index++)
        {
            Block block = document.Blocks[index];
            Block? next = index + 1 < document.Blocks.Length ? document.Blocks[index + 1] : null;
            inPart = block is Block.Heading { Level: > 2 } || (inPart && !EndsPart(block));
            bool stays = block is Block.Heading or Block.Picture || Introduces(block, next);
            bool isLegend = block is Block.Points && index > 0 && document.Blocks[index - 1] is Block.Picture;
            PdfTie tie = stays ? PdfTie.Bound : inPart && next is not null && !EndsPart(next) ? PdfTie.Kept : PdfTie.Loose;
            pieces.Add(PdfPiece.Gap(GapOver(block)) with { Tie = index == 0 ? PdfTie.Bound : pieces[^1].Tie });
            pieces.AddRange(Tied(Of(block), tie, inPart || isLegend));
        }

        return pieces.ToImmutable();
    }

    private static bool EndsPart(Block block) => block is Block.Heading or Block.Notice;

    // A line that tells to tick stays with its boxes, or with the first thing that has them.
    private static bool Introduces(Block block, Block? next) => block is Block.Paragraph && next is Block.Ticks or Block.Table or Block.Heading { Level: > 2 };

    private double GapOver(Block block) => _gap * block switch
    {
        Block.Heading { Level: 2 } => 2,
        Block.Heading => 1.8,
        Block.Notice => 1.5,
        _ => 1,
    };

    private static IEnumerable<PdfPiece> Tied(List<PdfPiece> pieces, PdfTie last, bool inPart = false) =>
        pieces.Select((piece, index) => piece with { Tie = index == pieces.Count - 1 ? last : inPart && piece.Tie == PdfTie.Loose ? PdfTie.Kept : piece.Tie });

    private PdfType TypeOf(double share) => new(look.BodyPoints * share, share > 1);

    private List<PdfPiece> Of(Block block) => block switch
    {
        Block.Heading { Level: 2 } heading => Underlined(Text(heading.Text, TypeOf(SectionShare))),
        Block.Heading heading => Text(heading.Text, new PdfType(look.BodyPoints, Bold: true)),
        Block.Paragraph paragraph => Text(paragraph.Text, TypeOf(1)),
        Block.Points points => [.. points.Items.SelectMany((item, index) => Item(item, points.InOrder ? $"{(index + 1).ToString(CultureInfo.InvariantCulture)}." : "•", 0))],
        Block.Ticks ticks => [Ticks(ticks)],
        Block.Notice notice => Framed([(notice.Title, TypeOf(1) with { Bold = true }, 0), .. notice.Items.Select(item => (item, TypeOf(1), 1))], LightFrame),
        Block.Lines lines => [.. Enumerable.Range(0, lines.Count).Select(_ => Writing())],
        Block.Table table => new PdfTable(look, letters).Of(table),
        Block.Picture picture => [Picture(picture.Drawing)],
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "No such part of a document."),
    };

    private double Line(PdfType type) => type.Size * look.LineSpacing;

    private List<PdfPiece> Text(string text, PdfType type, double indent = 0, double right = 0)
    {
        double height = Line(type);
        IReadOnlyList<string> lines = letters.Lines(SafeText.OneLine(text), type.Size, type.Bold, look.Width - indent - right);
        // The first two lines and the last two are not parted: no page begins or ends with a single line of a longer text.
        return [.. lines.Select((line, index) => new PdfPiece(height, (pen, top) => pen.Text(line, (_left + indent, top), height, type))
        {
            Tie = index == 0 || index == lines.Count - 2 ? PdfTie.Bound : PdfTie.Loose,
        })];
    }

    private List<PdfPiece> Underlined(List<PdfPiece> lines)
    {
        PdfPiece last = lines[^1];
        lines[^1] = last with
        {
            Height = last.Height + 2,
            Draw = (pen, top) =>
            {
                last.Draw(pen, top);
                pen.Line((_left, top + last.Height), (_left + look.Width, top + last.Height), BoxWeight);
            },
        };
        return lines;
    }

    private List<PdfPiece> Item(string text, string sign, double indent, double right = 0)
    {
        PdfType type = TypeOf(1);
        List<PdfPiece> lines = Text(text, type, indent + (Gutter * type.Size), right);
        PdfPiece first = lines[0];
        lines[0] = first with
        {
            Draw = (pen, top) =>
            {
                pen.Text(sign, (_left + indent, top), first.Height, type);
                first.Draw(pen, top);
            },
        };
        lines[^1] = lines[^1] with { Tie = PdfTie.Loose };
        return lines;
    }

    // Each line has its own pieces of the frame, so that a frame that is too high for a page can go on on the next.
    private List<PdfPiece> Framed(ImmutableArray<(string Text, PdfType Type, int Indent)> parts, double share)
    {
        double weight = share * look.BodyPoints;
        double inside = look.BodyPoints * 0.6;
        List<PdfPiece> lines = [.. parts.SelectMany(part => part.Indent > 0 ? Item(part.Text, "•", inside, inside) : Text(part.Text, part.Type, inside, inside))];
        double padding = look.BodyPoints * 0.4;
        lines.Insert(0, new PdfPiece(padding, (pen, top) => pen.Line((_left - (weight / 2), top), (_left + look.Width + (weight / 2), top), weight)));
        lines.Add(new PdfPiece(padding, (pen, top) => pen.Line((_left - (weight / 2), top + padding), (_left + look.Width + (weight / 2), top + padding), weight)));
        return [.. lines.Select(line => line with
        {
            Tie = PdfTie.Bound,
            Draw = (pen, top) =>
            {
                pen.Line((_left, top), (_left, top + line.Height), weight);
                pen.Line((_left + look.Width, top), (_left + look.Width, top + line.Height), weight);
                line.Draw(pen, top);
            },
        })];
    }

    private PdfPiece Writing() => new(2 * look.BodyPoints, (pen, top) => pen.Line((_left, top + (2 * look.BodyPoints)), (_left + look.Width, top + (2 * look.BodyPoints)), Rule));

    private PdfPiece Picture(Drawing drawing)
    {
        double scale = PictureShare * look.Width / drawing.Width;
        return new PdfPiece(scale * drawing.Height, (pen, top) => pen.Draw(drawing, (_left, top), scale));
    }

    private PdfPiece Ticks(Block.Ticks ticks)
    {
        double column = look.Width / ticks.Days.Length;
        double box = look.BodyPoints * 0.95;
        double step = box * 1.4;
        double padding = look.BodyPoints * 0.3;
        int inRow = Math.Max(1, (int)((column - padding) / step));
        PdfType type = TypeOf(1);
        ImmutableArray<IReadOnlyList<string>> days = [.. ticks.Days.Select(day => letters.Lines(SafeText.OneLine(day), type.Size, type.Bold, column - (2 * padding)))];
        double head = days.Max(day => day.Count) * Line(type);
        double height = head + (step * ticks.Times.Max(times => (Math.Max(1, times) + inRow - 1) / inRow)) + (2 * padding);
        return new PdfPiece(height, (pen, top) =>
        {
            for (int day = 0; day < ticks.Days.Length; day++)
            {
                double x = _left + (day * column);
                pen.Box((x, top), column, height, Rule);
                for (int line = 0; line < days[day].Count; line++)
                {
                    pen.Text(days[day][line], (x + padding, top + (line * Line(type))), Line(type), type);
                }

                Boxes(pen, (x + padding, top + head + padding), ticks.Times[day], (box, step, inRow));
            }
        });
    }

    private void Boxes(PdfPen pen, (double X, double Top) at, int times, (double Box, double Step, int InRow) of)
    {
        for (int one = 0; one < times; one++)
        {
            pen.Box((at.X + (one % of.InRow * of.Step), at.Top + (one / of.InRow * of.Step)), of.Box, of.Box, BoxWeight);
        }

        if (times == 0)
        {
            pen.Text("–", (at.X, at.Top), of.Step, TypeOf(1));
        }
    }
}
