using System.Collections.Immutable;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>A row with its cells by what they are.</summary>
internal sealed class CsvLine
{
    private readonly ImmutableArray<CsvCell> _cells;

    private CsvLine(int number, ImmutableArray<CsvCell> cells) => (Number, _cells) = (number, cells);

    /// <summary>The row as a spreadsheet counts it.</summary>
    public int Number { get; }

    /// <summary>The cells that are not empty.</summary>
    public ImmutableArray<CsvCell> Cells => _cells;

    /// <summary>The cell of a field; null where it is empty or there is no such column.</summary>
    public CsvCell? this[string field] => _cells.FirstOrDefault(cell => cell.Column.Field == field);

    /// <summary>The text of a field; null where it is empty.</summary>
    public string? Text(string field) => this[field]?.Text;

    /// <summary>The rows of a table.</summary>
    public static ImmutableArray<CsvLine> All(CsvTable table, ImmutableArray<CsvColumn> columns) => [.. table.Rows.Select(row => Of(row, columns))];

    private static CsvLine Of(CsvRow row, ImmutableArray<CsvColumn> columns) => new(
        row.Number,
        [
            .. columns.Where(column => !string.IsNullOrWhiteSpace(row.Cells[column.At])).Select(column => new CsvCell(
                ImportPlace.Row(row.Number, column.Head), SpreadsheetCell.Plain(row.Cells[column.At].Trim(' ', '\u00A0')), column)),
        ]);
}
