using System.Collections.Immutable;

namespace Progression.Exchange.Csv;

/// <summary>One row of a table.</summary>
/// <param name="Number">The row as a spreadsheet counts it, from 1; a cell of several lines is in one row, and an empty line is a row.</param>
/// <param name="Cells">Its cells, quotes taken off.</param>
public sealed record CsvRow(int Number, ImmutableArray<string> Cells)
{
    /// <summary>Whether nothing stands in it.</summary>
    public bool IsBlank => Cells.All(string.IsNullOrWhiteSpace);
}
