using Progression.Core.Documents;
using Progression.Core.Entry;

namespace Progression.Exchange.Pdf;

/// <summary>What stands at the foot of every page: the mark, whose page it is, and which.</summary>
internal sealed class PdfFoot
{
    private const double Tight = 1.25;
    private const double Rule = 0.6;

    private readonly PdfLook _look;
    private readonly PdfLetters _letters;
    private readonly PdfType _type;
    private readonly IReadOnlyList<(string Text, bool Bold)> _lines;
    private readonly double _line;

    internal PdfFoot(Document document, PdfLook look, PdfLetters letters, PdfType type)
    {
        (_look, _letters, _type, _line) = (look, letters, type, type.Size * Tight);
        string about = document.About is { } named ? $"{document.Title}. {named}" : document.Title;
        double room = look.Width - letters.Width("99 / 99", type.Size, bold: true) - type.Size;
        _lines =
        [
            .. letters.Lines(SafeText.OneLine(document.Mark), type.Size, bold: true, look.Width).Select(line => (line, true)),
            .. letters.Lines(SafeText.OneLine(about), type.Size, bold: false, room).Select(line => (line, false)),
        ];
        Top = look.Page.Height - look.MarginPoints - (_line * _lines.Count) - (_line / 2);
    }

    /// <summary>Where the foot begins and the text must end.</summary>
    internal double Top { get; }

    /// <summary>Draws it.</summary>
    /// <param name="pen">The page.</param>
    /// <param name="number">"2 / 4".</param>
    internal void Draw(PdfPen pen, string number)
    {
        double top = Top + (_line / 2);
        pen.Line((_look.MarginPoints, top - (_line / 4)), (_look.MarginPoints + _look.Width, top - (_line / 4)), Rule);
        foreach ((string text, bool bold) in _lines)
        {
            pen.Text(text, (_look.MarginPoints, top), _line, _type with { Bold = bold });
            top += _line;
        }

        PdfType strong = _type with { Bold = true };
        pen.Text(number, (_look.MarginPoints + _look.Width - _letters.Width(number, strong.Size, strong.Bold), top - _line), _line, strong);
    }
}
