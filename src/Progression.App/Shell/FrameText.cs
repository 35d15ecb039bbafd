using System.Globalization;
using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Progression.App.Shell;

/// <summary>
/// The changed cells of a screen in as few bytes as the usual control sequences (ECMA-48) allow: no cursor move that the next one
/// overrides, a style named once, the blank end of a row erased instead of written.
/// </summary>
internal sealed class FrameText
{
    // Shorter than this, blanks are cheaper than the sequence that erases them.
    private const int FewBlanks = 3;
    private static readonly Attribute Plain = new(Color.None, Color.None, TextStyle.None);

    private static readonly (TextStyle Style, int Code)[] StyleCodes =
    [
        (TextStyle.Bold, 1), (TextStyle.Faint, 2), (TextStyle.Italic, 3), (TextStyle.Underline, 4), (TextStyle.Blink, 5), (TextStyle.Reverse, 7),
        (TextStyle.Strikethrough, 9),
    ];

    private readonly StringBuilder _text = new();
    private readonly Cell[,] _cells;
    private readonly bool _sixteenColours;
    private Attribute _style = Plain;
    private (int Row, int Column) _at = (-1, -1);

    private FrameText(Cell[,] cells, bool sixteenColours) => (_cells, _sixteenColours) = (cells, sixteenColours);

    /// <summary>The text that brings a screen up to date; empty when nothing changed. The cells count as sent afterwards.</summary>
    /// <param name="buffer">The screen. A terminal that shows it is in the plain style before and after.</param>
    /// <param name="sixteenColours">Whether colours are the terminal's own sixteen.</param>
    public static string Of(IOutputBuffer buffer, bool sixteenColours)
    {
        ArgumentNullException.ThrowIfNull(buffer);
        if (buffer.Contents is not { } cells)
        {
            return "";
        }
        FrameText frame = new(cells, sixteenColours);
        for (int row = 0; row < buffer.Rows; row++)
        {
            if (buffer.DirtyLines[row])
            {
                frame.Row(row);
                buffer.DirtyLines[row] = false;
            }
        }
        frame.Use(Plain);
        return frame._text.ToString();
    }

    private void Row(int row)
    {
        int blanksFrom = BlanksFrom(row);
        for (int column = 0; column < _cells.GetLength(1); column++)
        {
            if (!_cells[row, column].IsDirty)
            {
                continue;
            }
            if (column >= blanksFrom && _cells.GetLength(1) - column > FewBlanks)
            {
                Go(row, column);
                Use(Plain);
                _text.Append("\e[K");
                Sent(row, column, _cells.GetLength(1));
                return;
            }
            column += Send(row, column) - 1;
        }
    }

    /// <summary>Sends a cell and tells how many columns it takes.</summary>
    private int Send(int row, int column)
    {
        Cell cell = _cells[row, column];
        int width = Math.Max(1, cell.Grapheme.GetColumns());
        Go(row, column);
        Use(cell.Attribute ?? Plain);
        _text.Append(cell.Grapheme);
        Sent(row, column, column + width);
        // Behind the last column terminals differ in where the cursor stands.
        _at = column + width < _cells.GetLength(1) ? (row, column + width) : (-1, -1);
        return width;
    }

    private void Sent(int row, int from, int to)
    {
        for (int column = from; column < Math.Min(to, _cells.GetLength(1)); column++)
        {
            _cells[row, column].IsDirty = false;
        }
    }

    private int BlanksFrom(int row)
    {
        int from = _cells.GetLength(1);
        while (from > 0 && _cells[row, from - 1] is { Grapheme: " " } cell && (cell.Attribute ?? Plain) == Plain)
        {
            from--;
        }
        return from;
    }

    private void Go(int row, int column)
    {
        if (_at == (row, column))
        {
            return;
        }
        _text.Append((row == _at.Row, column - _at.Column) switch
        {
            (true, 1) => "\e[C",
            (true, > 1 and int right) => Invariant($"\e[{right}C"),
            _ when column == 0 => Invariant($"\e[{row + 1}H"),
            _ => Invariant($"\e[{row + 1};{column + 1}H"),
        });
        _at = (row, column);
    }

    private void Use(Attribute style)
    {
        if (style == _style)
        {
            return;
        }
        _text.Append("\e[");
        if (style != Plain)
        {
            _text.Append(_style == Plain ? "" : "0;").AppendJoin(';', Codes(style));
        }
        _text.Append('m');
        _style = style;
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private IEnumerable<string> Codes(Attribute style)
    {
        IEnumerable<string> styles = StyleCodes.Where(known => style.Style.HasFlag(known.Style)).Select(known => known.Code.ToString(CultureInfo.InvariantCulture));
        return styles.Concat(Colour(style.Foreground, 0)).Concat(Colour(style.Background, 10));
    }

    private IEnumerable<string> Colour(Color colour, int background) =>
        colour == Color.None ? []
        : _sixteenColours ? [((int)colour.GetAnsiColorCode() + background).ToString(CultureInfo.InvariantCulture)]
        : [Invariant($"{38 + background};2;{colour.R};{colour.G};{colour.B}")];
}
