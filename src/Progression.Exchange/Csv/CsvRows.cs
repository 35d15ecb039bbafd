using System.Collections.Immutable;
using System.Text;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>
/// The rows of a CSV text by RFC 4180; a lone CR or LF ends a line too. Our own reader and not a library's: those that were tried take a quote in the middle
/// of a cell or after its end without a word, let an unclosed quote swallow the rows below it, or leave out cells too many, and each would change what was
/// measured in silence.
/// </summary>
internal sealed class CsvRows(string text, char separator)
{
    private readonly List<ImportProblem> _problems = [];
    private readonly StringBuilder _cell = new();
    private int _at;
    private int _row;

    /// <summary>What is wrong with the rows that were read so far.</summary>
    public IReadOnlyList<ImportProblem> Problems => _problems;

    /// <summary>The rows, read while they are asked for. It ends at a quote that is never closed.</summary>
    public IEnumerable<CsvRow> Read()
    {
        while (_at < text.Length)
        {
            _row++;
            ImmutableArray<string>.Builder cells = ImmutableArray.CreateBuilder<string>();
            bool goesOn;
            do
            {
                goesOn = Cell(cells.Count + 1);
                cells.Add(_cell.ToString());
            }
            while (goesOn);
            yield return new CsvRow(_row, cells.ToImmutable());
        }
    }

    /// <summary>Reads a cell and what ends it; whether another one of the row follows.</summary>
    private bool Cell(int column)
    {
        _cell.Clear();
        if (_at < text.Length && text[_at] == '"')
        {
            Quoted(column);
        }

        for (bool told = false; _at < text.Length; _at++)
        {
            char letter = text[_at];
            if (letter == separator)
            {
                _at++;
                return true;
            }

            if (letter is '\r' or '\n')
            {
                _at += letter == '\r' && _at + 1 < text.Length && text[_at + 1] == '\n' ? 2 : 1;
                return false;
            }

            if (letter == '"' && !told)
            {
                told = true;
                Refuse(column, "A quote stands in a cell that is not in quotes.", "the whole cell in quotes, and each quote in it doubled");
            }

            _cell.Append(letter);
        }

        return false;
    }

    /// <summary>Reads a cell in quotes up to its end; nothing but a separator or a line end may follow.</summary>
    private void Quoted(int column)
    {
        for (_at++; _at < text.Length; _at++)
        {
            if (text[_at] != '"')
            {
                _cell.Append(text[_at]);
            }
            else if (_at + 1 < text.Length && text[_at + 1] == '"')
            {
                _cell.Append('"');
                _at++;
            }
            else
            {
                _at++;
                if (_at < text.Length && text[_at] != separator && text[_at] is not ('\r' or '\n' or '"'))
                {
                    Refuse(column, "Something stands after the closing quote of a cell.", "a separator or the end of the line");
                }

                return;
            }
        }

        Refuse(column, "A quote that is opened here is never closed.", "a closing quote");
    }

    private void Refuse(int column, string wrong, string allowed) =>
        _problems.Add(new ImportProblem(ImportPlace.Row(_row, FormattableString.Invariant($"cell {column}")), wrong, allowed, _cell.ToString()));
}
