using System.Collections.Immutable;
using System.Globalization;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>A table of a CSV file: one header, and rows of as many cells.</summary>
/// <param name="Heads">The header, spaces at the ends dropped.</param>
/// <param name="Rows">The rows that are not empty.</param>
/// <param name="Separator">What parts the cells.</param>
public sealed record CsvTable(ImmutableArray<string> Heads, ImmutableArray<CsvRow> Rows, char Separator)
{
    /// <summary>Most columns of a file.</summary>
    public const int MostColumns = 200;

    /// <summary>Most cells of a file.</summary>
    public const int MostCells = 1_000_000;

    private static readonly ImmutableArray<char> Separators = [',', ';', '\t'];

    /// <summary>The table of a text, or everything that is wrong with its form. The separator is the one that makes most columns of the header.</summary>
    public static (CsvTable? Table, ImmutableArray<ImportProblem> Problems) Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        char separator = Separators.MaxBy(one => Header(text, one)?.Cells.Length ?? 0);
        if (Header(text, separator) is not { } header)
        {
            return (null, [new ImportProblem(ImportPlace.File, "The file is empty.", "a header and at least one row", "")]);
        }

        if (header.Cells.Length is 1 or > MostColumns)
        {
            return (null, [new ImportProblem(
                ImportPlace.Row(header.Number), "The first row is not the header of a table.",
                $"2 to {MostColumns} columns, parted by comma, semicolon or tab", Columns(header.Cells.Length))]);
        }

        (ImmutableArray<CsvRow> rows, ImmutableArray<ImportProblem> problems) = Body(text, header, separator);
        return problems.IsEmpty ? (new CsvTable([.. header.Cells.Select(cell => cell.Trim())], rows, separator), []) : (null, problems);
    }

    private static CsvRow? Header(string text, char separator) => new CsvRows(text, separator).Read().FirstOrDefault(row => !row.IsBlank);

    private static (ImmutableArray<CsvRow>, ImmutableArray<ImportProblem>) Body(string text, CsvRow header, char separator)
    {
        CsvRows all = new(text, separator);
        ImmutableArray<CsvRow>.Builder rows = ImmutableArray.CreateBuilder<CsvRow>();
        List<ImportProblem> problems = [];
        int cells = 0;
        foreach (CsvRow row in all.Read().Where(row => row.Number > header.Number))
        {
            cells += row.Cells.Length;
            if (cells > MostCells || problems.Count >= ImportPreview.MostProblems || all.Problems.Count >= ImportPreview.MostProblems)
            {
                problems.AddRange(cells > MostCells ? [new ImportProblem(ImportPlace.Row(row.Number), "The file has too many cells to be one of a single knee.", $"at most {MostCells} cells", "more")] : []);
                break;
            }

            if (row.IsBlank)
            {
                continue;
            }

            rows.Add(row);
            if (row.Cells.Length != header.Cells.Length)
            {
                problems.Add(new ImportProblem(ImportPlace.Row(row.Number), "The row has another number of cells than the header.", Columns(header.Cells.Length), Columns(row.Cells.Length)));
            }
        }

        return (rows.ToImmutable(), [.. all.Problems.Concat(problems).OrderBy(problem => problem.Place.Order)]);
    }

    private static string Columns(int count) => count.ToString(CultureInfo.InvariantCulture) + (count == 1 ? " cell" : " cells");
}
