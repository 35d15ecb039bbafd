using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Progression.Core.People;
using Progression.Exchange.Csv;
using Progression.Exchange.Tests.Import;

namespace Progression.EndToEnd.Tests;

/// <summary>Tables read and written by Python's own csv module, strictly.</summary>
public sealed class TableInAnotherProgramTests : IDisposable
{
    private static readonly string[] Words =
        ["KL", "two words", "a, b", "a; b", "say \"so\"", "\"", "\"\"", "=1+1", "+49", "-5", "@x", "'quoted", "é 膝 µ", "null", "1,5", "back\\slash", "# no comment", " a ", "tab\there", "two\r\nlines", ","];

    private readonly string _file = Path.GetTempFileName();

    public void Dispose() => File.Delete(_file);

    [Fact]
    public void What_is_written_here_is_read_there_cell_by_cell()
    {
        Case patient = SomeKnee.Patient with
        {
            Assessments = [.. Words.Select((word, day) => SomeKnee.Visit(SomeKnee.Operated.AddDays(day), ("extension_passive", -3.5)) with { Rater = word })],
        };
        string text = MeasuresCsv.Of(patient, SomeKnee.Library);
        File.WriteAllText(_file, text);
        JsonNode[] rows = [.. JsonNode.Parse(AnotherProgram.Run("read-table.py", "", "read", _file))!.AsArray().Select(row => row!)];
        Assert.Equal(Words.Length + 2, rows.Length);
        Assert.Equal(Words.Select(SpreadsheetCell.Guarded), rows[2..].Select(row => (string)row[9]!));
        Assert.All(rows[2..], row => Assert.Equal("-3.5", (string)row[6]!));
        Assert.Equal(CsvTable.Of(text).Table!.Rows.Select(row => string.Join('|', row.Cells)), rows[1..].Select(row => string.Join('|', row.AsArray().Select(cell => (string)cell!))));
    }

    [Theory]
    [InlineData("excel")]
    [InlineData("excel-tab")]
    [InlineData("unix")]
    [InlineData("semicolon")]
    public void What_is_written_there_is_read_here_cell_by_cell(string dialect)
    {
        JsonArray rows = [new JsonArray("first", "second", "third"), .. Words.Select(word => new JsonArray(word, "1", word + "x"))];
        AnotherProgram.Run("read-table.py", rows.ToJsonString(), dialect, _file);
        (CsvTable? table, ImmutableArray<Exchange.Import.ImportProblem> problems) = CsvTable.Of(File.ReadAllText(_file));
        Assert.Empty(problems);
        Assert.Equal(Words, table!.Rows.Select(row => row.Cells[0]));
        Assert.Equal(Words.Select(word => word + "x"), table.Rows.Select(row => row.Cells[2]));
    }
}
