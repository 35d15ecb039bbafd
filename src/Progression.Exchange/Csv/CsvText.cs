using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>Reads the cells that files of measures and of sessions have in common; what is wrong goes to the problems.</summary>
internal sealed class CsvText(ImportGround ground, List<ImportProblem> problems)
{
    private const int MostLetters = 120;

    /// <summary>One line of visible text; null where the cell is empty or wrong.</summary>
    public string? Line(CsvCell? cell, int most = MostLetters)
    {
        if (cell is null)
        {
            return null;
        }

        string safe = SafeText.OneLine(cell.Text);
        bool isHidden = safe.Count(letter => letter == SafeText.Substitute) != cell.Text.Count(letter => letter == SafeText.Substitute);
        string? wrong = isHidden ? "A control or invisible character, or a second line, stands in the text." : safe.Length > most ? "The text does not fit." : null;
        if (wrong is null)
        {
            return safe.Trim();
        }

        problems.Add(cell.Refused(wrong, $"one line of 1 to {most} visible characters"));
        return null;
    }

    /// <summary>A whole number; null where the cell is empty or wrong.</summary>
    public int? Whole(CsvCell? cell, int most) => cell is null ? null : Taken(WholeNumberText.Read(cell.Column.Head, cell.Text, 1, most), cell)?.Count;

    /// <summary>Refuses a row of another person, and a week that is not that of the row's day: both tell that the file is not of this knee.</summary>
    public void Judge(CsvLine line, DateOnly? day)
    {
        JudgeCode(line);
        if (line[CsvField.Week] is { } week && day is { } on)
        {
            string right = PostOpWeek.Of(ground.Patient.Operation.Date, on).ToString(CultureInfo.InvariantCulture);
            if (week.Text != right)
            {
                problems.Add(week.Refused($"{on:yyyy-MM-dd} is not in this week after the operation.", right));
            }
        }

        if (line[CsvField.Date] is null)
        {
            problems.Add(new ImportProblem(ImportPlace.Row(line.Number, CsvField.Date), "The row has no day.", "a day", ""));
        }
    }

    /// <summary>Refuses a row of another person.</summary>
    public void JudgeCode(CsvLine line)
    {
        if (line[CsvField.Code] is { } code && ground.OtherPerson(code.Place, code.Text) is { } other)
        {
            problems.Add(other);
        }
    }

    /// <summary>What was read; a problem goes to the problems.</summary>
    public T? Taken<T>(Entered<T> entered, CsvCell cell)
        where T : class
    {
        if (entered.Value is null)
        {
            problems.Add(ImportProblem.Of(cell.Place, entered.Problems[0]));
        }

        return entered.Value;
    }

    /// <summary>The columns that a file must have and lacks.</summary>
    public static IEnumerable<ImportProblem> Missing(ImmutableArray<CsvColumn> columns, params ReadOnlySpan<string> needed)
    {
        List<ImportProblem> missing = [];
        foreach (string name in needed)
        {
            if (columns.All(column => column.Field != name))
            {
                missing.Add(new ImportProblem(ImportPlace.Row(1), "A column is missing.", $"a column \"{name}\", or --map \"HEAD={name}\"", string.Join(", ", columns.Select(column => column.Head))));
            }
        }

        return missing;
    }
}
