using System.Collections.Immutable;
using Progression.Core.Plots;
using ScottPlot;

namespace Progression.Exchange.Plots;

/// <summary>Under the axes: a sample of each part with what it is, then the note, broken into lines that fit.</summary>
internal sealed class PlotKey : IPanel
{
    private const float Line = 18;
    private const float Sample = 30;
    private const float Gap = 8;
    private const float Between = 22;
    private const float LetterSize = 12;
    private const float NoteSize = 11;
    private const float Side = 12;

    private readonly ImmutableArray<(PlotPart Part, string Text, float Left, int Row)> _entries;
    private readonly ImmutableArray<string> _note;
    private readonly int _rows;

    internal PlotKey(PlotContent content, float width)
    {
        using Paint paint = Paint.NewDisposablePaint();
        (float left, int row) = (Side, 0);
        ImmutableArray<(PlotPart, string, float, int)>.Builder entries = ImmutableArray.CreateBuilder<(PlotPart, string, float, int)>();
        foreach (PlotPart part in content.Parts.Where(part => part.Legend is not null))
        {
            float wide = Sample + Gap + Wide(part.Legend!, LetterSize, paint);
            (left, row) = left > Side && left + wide > width - Side ? (Side, row + 1) : (left, row);
            entries.Add((part, part.Legend!, left, row));
            left += wide + Between;
        }

        _entries = entries.ToImmutable();
        _rows = _entries.IsEmpty ? 0 : row + 1;
        _note = content.Note is null ? [] : [.. Broken(content.Note, width - (2 * Side), paint)];
    }

    /// <inheritdoc/>
    public bool IsVisible { get; set; } = true;

    /// <inheritdoc/>
    public float MinimumSize { get; set; }

    /// <inheritdoc/>
    public float MaximumSize { get; set; } = float.MaxValue;

    /// <inheritdoc/>
    public Edge Edge => Edge.Bottom;

    /// <inheritdoc/>
    public bool ShowDebugInformation { get; set; }

    /// <inheritdoc/>
    public float Measure(Paint paint) => ((_rows + _note.Length) * Line) + Gap;

    /// <inheritdoc/>
    public PixelRect GetPanelRect(PixelRect dataRect, float size, float offset, Paint paint) =>
        new(dataRect.Left, dataRect.Right, dataRect.Bottom + offset + size, dataRect.Bottom + offset);

    /// <inheritdoc/>
    public void Render(RenderPack rp, float size, float offset)
    {
        PlotInk ink = new(rp);
        float top = GetPanelRect(rp.DataRect, size, offset, rp.Paint).Top;
        foreach ((PlotPart part, string text, float left, int row) in _entries)
        {
            PixelRect room = new(left, left + Sample, top + ((row + 1) * Line) - 4, top + (row * Line) + 4);
            Draw(ink, part, room);
            ink.Text(text, new Pixel(room.Right + Gap, room.VerticalCenter), (Alignment.MiddleLeft, LetterSize));
        }

        for (int row = 0; row < _note.Length; row++)
        {
            ink.Text(_note[row], new Pixel(Side, top + ((_rows + row + 0.5f) * Line)), (Alignment.MiddleLeft, NoteSize));
        }
    }

    private static void Draw(PlotInk ink, PlotPart part, PixelRect room)
    {
        switch (part)
        {
            case PlotPart.Range range:
                ink.Range([room.TopLeft, room.TopRight, room.BottomRight, room.BottomLeft], range.IsDark);
                break;
            case PlotPart.Line line:
                ink.Line([room.LeftCenter, room.RightCenter], line.Stroke);
                break;
            case PlotPart.Marks marks:
                if (marks.Points.Any(mark => mark.Low is not null))
                {
                    ink.Error(room.HorizontalCenter, room.Bottom + 3, room.Top - 3);
                }

                ink.Mark(room.Center, marks.Mark);
                break;
            case PlotPart.Columns columns:
                ink.Column(columns.Filling == PlotFilling.Black ? room.Contract(Sample / 3, 0) : room, columns.Filling);
                break;
        }
    }

    private static IEnumerable<string> Broken(string text, float width, Paint paint)
    {
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Wide(longer, NoteSize, paint) > width)
            {
                yield return line;
                longer = word;
            }

            line = longer;
        }

        yield return line;
    }

    private static float Wide(string text, float size, Paint paint) => new LabelStyle { Text = text, FontName = PlotFont.Name, FontSize = size }.Measure(paint).Width;
}
