using System.Text;
using Progression.App.Pictures;

namespace Progression.App.Chart;

/// <summary>Cells of a plot while it is drawn: what is put later covers what was there.</summary>
internal sealed class PlotCanvas
{
    private readonly (char Letter, Ink Ink)[,] _cells;

    public PlotCanvas(int rows, int columns)
    {
        _cells = new (char, Ink)[rows, columns];
        for (int row = 0; row < rows; row++)
        {
            for (int column = 0; column < columns; column++)
            {
                _cells[row, column] = (' ', Ink.Plain);
            }
        }
    }

    public int Rows => _cells.GetLength(0);

    public int Columns => _cells.GetLength(1);

    /// <summary>Puts a text; what would lie outside is left out.</summary>
    public void Put(int row, int column, string text, Ink ink)
    {
        for (int at = 0; at < text.Length; at++)
        {
            if (row >= 0 && row < Rows && column + at >= 0 && column + at < Columns)
            {
                _cells[row, column + at] = (text[at], ink);
            }
        }
    }

    public IEnumerable<PictureRow> ToRows() => Enumerable.Range(0, Rows).Select(ToRow);

    private PictureRow ToRow(int row)
    {
        List<TextSpan> spans = [];
        StringBuilder run = new();
        for (int column = 0; column < Columns; column++)
        {
            run.Append(_cells[row, column].Letter);
            if (column == Columns - 1 || _cells[row, column + 1].Ink != _cells[row, column].Ink)
            {
                spans.Add(new TextSpan(run.ToString(), _cells[row, column].Ink));
                run.Clear();
            }
        }

        return new([.. spans]);
    }
}
