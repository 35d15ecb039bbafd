using System.Collections.Immutable;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>Reads a table of measures: one reading in a row, or one visit in a row with a column for each measure.</summary>
internal sealed class MeasuresReader
{
    private static readonly ImmutableArray<string> OfOneReading =
        [CsvField.Measure, CsvField.Value, CsvField.Unit, CsvField.Trials, CsvField.Device, CsvField.Position, CsvField.Steps];

    private readonly List<ImportProblem> _problems = [];
    private readonly HashSet<int> _withoutUnit = [];
    private readonly ImportGround _ground;
    private readonly CsvText _text;
    private DecimalMark _mark;
    private DeficitSign? _sign;

    private MeasuresReader(ImportGround ground) => (_ground, _text) = (ground, new CsvText(ground, _problems));

    /// <summary>What the table comes to.</summary>
    /// <param name="ground">The case, the library and the day.</param>
    /// <param name="table">The file.</param>
    /// <param name="choices">What the person said.</param>
    public static ImportResult Read(ImportGround ground, CsvTable table, CsvChoices choices) => new MeasuresReader(ground).Read(table, choices);

    private ImportResult Read(CsvTable table, CsvChoices choices)
    {
        (ImmutableArray<CsvColumn> columns, ImmutableArray<ImportProblem> unknown) = CsvColumns.Of(table, CsvField.Measures(_ground.Library), choices);
        if (unknown.Length > 0 || Shape(columns).Any())
        {
            return ImportResult.Refused([.. unknown.IsEmpty ? Shape(columns) : unknown]);
        }

        ImmutableArray<CsvLine> lines = CsvLine.All(table, columns);
        _sign = choices.Deficits ?? (table.Heads.SequenceEqual(MeasuresCsv.Heads) ? DeficitSign.Positive : _ground.Patient.DeficitWritten);
        CsvDays days = CsvDays.Read(lines, choices.Days);
        (DecimalMark? mark, ImmutableArray<ImportProblem> mixed) = CsvDecimals.Of(lines.SelectMany(Numbers), table.Separator, choices.Decimals);
        _problems.AddRange([.. days.Problems, .. mixed]);
        _mark = mark ?? DecimalMark.Point;
        ImmutableArray<FoundReading> found = mark is null ? [] : [.. lines.SelectMany(line => Readings(line, days.Of(line)))];
        return ReadingImport.Of(_ground, found, _problems);
    }

    private IEnumerable<ImportProblem> Shape(ImmutableArray<CsvColumn> columns)
    {
        bool hasMeasures = columns.Any(column => _ground.Library.Measures.ContainsKey(column.Field));
        return hasMeasures
            ? [
                .. CsvText.Missing(columns, CsvField.Date),
                .. columns.Where(column => OfOneReading.Contains(column.Field)).Select(column => new ImportProblem(
                    ImportPlace.Row(1, column.Head), "This column belongs to a file with one reading in a row, and the file has columns of measures too.", "one or the other", column.Head)),
            ]
            : CsvText.Missing(columns, CsvField.Date, CsvField.Measure, CsvField.Value);
    }

    private IEnumerable<CsvCell> Numbers(CsvLine line) => Values(line).Where(value => value.Measure is { Id: not MeasureIds.Effusion }).Select(value => value.Cell);

    /// <summary>The cells of a row that hold a value, each with its measure; null where there is no such measure.</summary>
    private IEnumerable<(CsvCell Cell, Measure? Measure)> Values(CsvLine line) => line[CsvField.Value] is { } value
        ? [(value, MeasureOf(line.Text(CsvField.Measure) ?? ""))]
        : line.Cells.Where(cell => _ground.Library.Measures.ContainsKey(cell.Column.Field)).Select(cell => (cell, (Measure?)_ground.Library.Measures[cell.Column.Field]));

    private Measure? MeasureOf(string name) => _ground.Library.Measures.Values.FirstOrDefault(measure => CsvField.Plain(name) is { } plain && (plain == measure.Id || plain == CsvField.Plain(measure.Title)));

    private IEnumerable<FoundReading> Readings(CsvLine line, DateOnly? day)
    {
        _text.Judge(line, day);
        string? rater = _text.Line(line[CsvField.Rater]);
        bool? isBaseline = line[CsvField.Visit] is { } visit
            ? _text.Taken(WordText.Read(visit.Column.Head, visit.Text, (MeasuresCsv.Baseline, true), (MeasuresCsv.Since, false)), visit)?.Value
            : null;
        foreach ((CsvCell cell, Measure? measure) in Values(line))
        {
            if (measure is null)
            {
                _problems.Add(UnknownMeasure(line));
            }
            else if (ValueOf(cell, measure, line.Text(CsvField.Unit)) is { } reading && day is { } on)
            {
                yield return new FoundReading(cell.Place, on, reading with
                {
                    Trials = _text.Whole(line[CsvField.Trials], Reading.MostTrials),
                    Rater = rater,
                    Device = _text.Line(line[CsvField.Device]),
                    Position = _text.Line(line[CsvField.Position]),
                    Steps = _text.Whole(line[CsvField.Steps], Reading.MostSteps),
                })
                { SaidBaseline = isBaseline };
            }
        }
    }

    private ImportProblem UnknownMeasure(CsvLine line)
    {
        string name = line.Text(CsvField.Measure) ?? "";
        string near = NearestWord.To(CsvField.Plain(name), _ground.Library.Measures.Keys) is { } word ? $" Did you mean \"{word}\"?" : "";
        return new ImportProblem(line[CsvField.Measure]?.Place ?? ImportPlace.Row(line.Number, CsvField.Measure), "There is no such measure." + near, "the id or name of a measure of the library", name);
    }

    private Reading? ValueOf(CsvCell cell, Measure measure, string? rowUnit)
    {
        if (WrittenDeficit.Concerns(measure.Id) && _sign is null)
        {
            _sign = DeficitSign.Positive;
            _problems.Add(cell.Refused(
                "Extension deficits are given, and how they are written is not known.",
                $"--deficits positive ({WrittenDeficit.Words(DeficitSign.Positive)}), or --deficits negative ({WrittenDeficit.Words(DeficitSign.Negative)})"));
        }

        string? unit = measure.Unit == "1" ? null : rowUnit ?? cell.Column.Unit;
        string text = CsvDecimals.WithPoint(cell.Text, _mark);
        bool isBare = text.Length > 0 && char.IsAsciiDigit(text[^1]);
        if (isBare && unit is null && measure.Unit != "1")
        {
            // Told once for a column: it is the column that lacks it.
            if (_withoutUnit.Add(cell.Column.At))
            {
                _problems.Add(cell.Refused("The value has no unit.", $"a unit in the head, \"{cell.Column.Head} ({measure.Unit})\", in a column \"{CsvField.Unit}\", or --map \"{cell.Column.Head}={measure.Id} {measure.Unit}\""));
            }

            return null;
        }

        if (!isBare && unit is not null && !text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) && char.IsAsciiDigit(text.TrimStart('-') is [var first, ..] ? first : ' '))
        {
            _problems.Add(cell.Refused("The cell and its column have different units.", $"a value in {unit}"));
            return null;
        }

        DeficitSign sign = _sign ?? DeficitSign.Positive;
        Reading? read = _text.Taken(MeasureText.Read(WrittenDeficit.Range(sign, measure), cell.Column.Head, isBare && unit is not null ? $"{text} {unit}" : text), cell);
        return read is null ? null : read with { Value = WrittenDeficit.Turn(sign, measure.Id, read.Value) };
    }
}
