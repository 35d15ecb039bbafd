using System.Buffers;
using System.Text;

namespace Progression.Exchange.Csv;

/// <summary>
/// Rows as CSV by RFC 4180: a header row, commas, lines ended by CR LF, cells with a comma, quote or line end in quotes, quotes doubled; UTF-8 without a mark.
/// Text is guarded against being run by a spreadsheet; numbers are not.
/// </summary>
internal sealed class CsvWriter
{
    private static readonly SearchValues<char> ToBeQuoted = SearchValues.Create(",;\"\r\n\t");

    private readonly StringBuilder _text = new();
    private readonly int _columns;
    private int _cells;

    /// <summary>Begins with the header.</summary>
    public CsvWriter(params ReadOnlySpan<string> heads)
    {
        _columns = heads.Length;
        foreach (string head in heads)
        {
            Text(head);
        }
    }

    /// <summary>A cell of text; null or empty is an empty cell.</summary>
    public CsvWriter Text(string? text) => Cell(SpreadsheetCell.Guarded(text ?? ""));

    /// <summary>A cell that is a number, written with a point and without a unit; null is an empty cell.</summary>
    public CsvWriter Number(string? number) => Cell(number ?? "");

    /// <inheritdoc/>
    public override string ToString() => _text.ToString();

    private CsvWriter Cell(string text)
    {
        bool isQuoted = text.AsSpan().IndexOfAny(ToBeQuoted) >= 0 || text.Length != text.Trim(' ').Length;
        _text.Append(isQuoted ? $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : text);
        _cells++;
        _text.Append(_cells % _columns == 0 ? "\r\n" : ",");
        return this;
    }
}
