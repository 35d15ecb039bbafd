using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.ViewBase;
using Cell = Terminal.Gui.Drawing.Cell;

namespace Progression.App.Shell;

/// <summary>
/// Sends only the cells that differ from what the terminal already shows. The library marks every cell a view writes as
/// changed, which over a slow line costs twenty times the bytes.
/// </summary>
internal sealed class ChangedCells
{
    // Bytes of a cursor move, such as ESC [ 1 2 ; 1 0 8 H.
    private const int ShortestJump = 8;

    private readonly IApplication _application;
    private Cell[,]? _shown;

    private ChangedCells(IApplication application) => _application = application;

    /// <summary>Filters what a view draws. The order matters: after drawing, before sending; remember after sending.</summary>
    public static void Filter(IApplication application, View view)
    {
        ChangedCells cells = new(application);
        view.DrawComplete += (_, _) => cells.Unmark();
        application.LayoutAndDrawComplete += (_, _) => cells.Remember();
        application.Driver!.ClearedContents += (_, _) => cells._shown = null;
    }

    private void Unmark()
    {
        IOutputBuffer buffer = _application.Driver!.GetOutputBuffer();
        if (buffer.Contents is not { } drawn || _shown is null || !SameSize(drawn, _shown))
        {
            return;
        }
        for (int row = 0; row < buffer.Rows; row++)
        {
            if (buffer.DirtyLines[row])
            {
                buffer.DirtyLines[row] = UnmarkRow(drawn, row);
            }
        }
    }

    /// <summary>Unmarks equal cells of a row and says whether any cell still has to be sent.</summary>
    private bool UnmarkRow(Cell[,] drawn, int row)
    {
        int lastChanged = -1;
        for (int column = 0; column < drawn.GetLength(1); column++)
        {
            ref Cell cell = ref drawn[row, column];
            Cell shown = _shown![row, column];
            cell.IsDirty &= cell.Grapheme != shown.Grapheme || cell.Attribute != shown.Attribute;
            if (cell.IsDirty)
            {
                Bridge(drawn, row, lastChanged, column);
                lastChanged = column;
            }
        }
        return lastChanged >= 0;
    }

    /// <summary>Sends a few equal cells between two changed ones along with them: moving the cursor over them would cost more.</summary>
    private static void Bridge(Cell[,] drawn, int row, int from, int to)
    {
        if (from < 0 || to - from - 1 > ShortestJump)
        {
            return;
        }
        for (int column = from + 1; column < to; column++)
        {
            if (drawn[row, column].Attribute != drawn[row, from].Attribute)
            {
                return;
            }
        }
        for (int column = from + 1; column < to; column++)
        {
            drawn[row, column].IsDirty = true;
        }
    }

    private void Remember()
    {
        Cell[,]? drawn = _application.Driver?.GetOutputBuffer().Contents;
        if (drawn is not null && _shown is not null && SameSize(drawn, _shown))
        {
            Array.Copy(drawn, _shown, drawn.Length);
        }
        else
        {
            _shown = (Cell[,]?)drawn?.Clone();
        }
    }

    private static bool SameSize(Cell[,] one, Cell[,] other) =>
        one.GetLength(0) == other.GetLength(0) && one.GetLength(1) == other.GetLength(1);
}
