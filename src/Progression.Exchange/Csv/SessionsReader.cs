using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Progression.Core.People;
using Progression.Exchange.Import;
using Progression.Records.Cases;
using Progression.Records.Yaml;

namespace Progression.Exchange.Csv;

/// <summary>Reads a table of sessions. A row is read as the session file that says the same, so that what may be logged is told in one place.</summary>
internal sealed partial class SessionsReader
{
    private readonly List<ImportProblem> _problems = [];
    private readonly List<ImportProblem> _queries = [];
    private readonly List<ImportLine> _lines = [];
    private readonly List<SessionLog> _there;
    private readonly ImportGround _ground;
    private readonly CsvText _text;

    private SessionsReader(ImportGround ground) => (_ground, _text, _there) = (ground, new CsvText(ground, _problems), [.. ground.Patient.Sessions]);

    /// <summary>What the table comes to.</summary>
    /// <param name="ground">The case, the library and the day.</param>
    /// <param name="table">The file.</param>
    /// <param name="choices">What the person said.</param>
    public static ImportResult Read(ImportGround ground, CsvTable table, CsvChoices choices) => new SessionsReader(ground).Read(table, choices);

    private ImportResult Read(CsvTable table, CsvChoices choices)
    {
        (ImmutableArray<CsvColumn> columns, ImmutableArray<ImportProblem> unknown) = CsvColumns.Of(table, CsvField.Sessions, choices);
        ImmutableArray<ImportProblem> shape = unknown.IsEmpty ? [.. CsvText.Missing(columns, CsvField.Date, SessionsCsv.Fields[0])] : unknown;
        if (shape.Length > 0)
        {
            return ImportResult.Refused(shape);
        }

        ImmutableArray<CsvLine> lines = CsvLine.All(table, columns);
        CsvDays days = CsvDays.Read(lines, choices.Days);
        (DecimalMark? mark, ImmutableArray<ImportProblem> mixed) = CsvDecimals.Of(lines.SelectMany(line => line.Cells.Where(cell => SessionsCsv.Units.ContainsKey(cell.Column.Field))), table.Separator, choices.Decimals);
        _problems.AddRange([.. days.Problems, .. mixed]);
        Case entered = _ground.Patient;
        foreach (CsvLine line in mark is null ? [] : lines)
        {
            DateOnly? day = days.Of(line);
            _text.Judge(line, day);
            if (day is { } on && Session(line, on, mark!.Value) is { } session && Judge(line, session, entered) == ImportFate.ComesIn)
            {
                entered = entered.With(session);
            }
        }

        return ImportResult.Of(entered, [.. _lines], _problems, _problems.Count > 0 ? [] : _queries);
    }

    private SessionLog? Session(CsvLine line, DateOnly day, DecimalMark mark)
    {
        int before = _problems.Count;
        StringBuilder yaml = new($"schema: session-file/1\nsessions:\n  - date: {day:yyyy-MM-dd}\n");
        foreach (CsvCell cell in line.Cells.Where(cell => SessionsCsv.Fields.Contains(cell.Column.Field)))
        {
            string? text = _text.Line(cell, most: 2000);
            yaml.Append(text is null ? "" : cell.Column.Field == SessionsCsv.Exercises ? Exercises(text) : $"    {cell.Column.Field}: {Quoted(WithUnit(cell.Column, text, mark))}\n");
        }

        if (_problems.Count > before)
        {
            return null;
        }

        SessionFileResult read = SessionFileReader.Read(
            WrittenFile.Of("row", Encoding.UTF8.GetBytes(yaml.ToString())), _ground.Patient with { Sessions = [] }, _ground.Library, _ground.Today);
        _problems.AddRange(read.Problems.Select(problem => new ImportProblem(Place(line, problem), problem.Wrong, problem.Allowed, problem.Found)));
        _queries.AddRange(read.Queries.Select(query => new ImportProblem(Place(line, query), query.Wrong, query.Allowed, query.Found)));
        return read.Logged.FirstOrDefault();
    }

    /// <summary>A session that is there already is left out; another of the same day can be right, and is asked back.</summary>
    private ImportFate Judge(CsvLine line, SessionLog session, Case entered)
    {
        string text = CaseJson.Node(session).ToJsonString();
        int same = _there.FindIndex(one => one.Date == session.Date && CaseJson.Node(one).ToJsonString() == text);
        if (same >= 0)
        {
            _there.RemoveAt(same);
        }
        else if (entered.Sessions.Any(one => one.Date == session.Date))
        {
            _queries.Add(new ImportProblem(ImportPlace.Row(line.Number), "Another session of this day is there; please check that both were done.", "a day without another session", $"{session.Date:yyyy-MM-dd}"));
        }

        ImportFate fate = same >= 0 ? ImportFate.IsThere : ImportFate.ComesIn;
        string done = string.Create(CultureInfo.InvariantCulture, $"{session.Contractions} stimulated contractions") + string.Concat(session.Exercises.Select(one => ", " + one.Exercise));
        _lines.Add(new ImportLine(ImportPlace.Row(line.Number), $"{session.Date:yyyy-MM-dd}, week {PostOpWeek.Of(_ground.Patient.Operation.Date, session.Date)}", "session", done, fate));
        return fate;
    }

    private static string WithUnit(CsvColumn column, string text, DecimalMark mark)
    {
        string number = SessionsCsv.Units.ContainsKey(column.Field) ? CsvDecimals.WithPoint(text, mark) : text;
        return column.Unit is { } unit && SessionsCsv.Units.ContainsKey(column.Field) && char.IsAsciiDigit(number[^1]) ? $"{number} {unit}" : number;
    }

    private static string Exercises(string text)
    {
        StringBuilder yaml = new($"    {SessionsCsv.Exercises}:\n");
        foreach (string each in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            string[] parts = each.Split(':', 2, StringSplitOptions.TrimEntries);
            yaml.Append(CultureInfo.InvariantCulture, $"      - exercise: {Quoted(parts[0])}\n");
            string done = parts.Length > 1 ? parts[1] : "";
            yaml.Append(done.Length == 0 ? "" : Timed().IsMatch(done) ? $"        time: {Quoted(done)}\n"
                : $"        sets: [{string.Join(", ", done.Split(',', StringSplitOptions.TrimEntries).Select(Quoted))}]\n");
        }

        return yaml.ToString();
    }

    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";

    private static ImportPlace Place(CsvLine line, FileProblem problem)
    {
        string field = FieldOf().Match(problem.Field) is { Success: true } match ? match.Groups[1].Value : "";
        return ImportPlace.Row(line.Number, line[field]?.Column.Head ?? field);
    }

    [GeneratedRegex(@"^sessions\[1\]\.([a-z_]+)", RegexOptions.CultureInvariant)]
    private static partial Regex FieldOf();

    [GeneratedRegex(@"^[0-9.]+ *[a-z]+\z", RegexOptions.CultureInvariant)]
    private static partial Regex Timed();
}
