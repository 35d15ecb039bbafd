using System.Collections.Immutable;
using Progression.Core.People;
using Progression.Exchange.Csv;

namespace Progression.Exchange.Tests.Csv;

public sealed class RememberedColumnsTests : IDisposable
{
    private static readonly ImmutableArray<string> Heads = ["Visit day", "Bend"];

    private static readonly CsvChoices Said = new()
    {
        Columns = [("Visit day", "date"), ("Bend", "flexion_active deg")],
        Days = DayOrder.DayFirst,
        Decimals = DecimalMark.Comma,
        Deficits = DeficitSign.Negative,
    };

    private readonly string _folder = Directory.CreateTempSubdirectory("columns").FullName;

    private string File => Path.Combine(_folder, "settings", "columns.json");

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void What_was_said_of_a_header_is_there_for_the_next_file_with_it()
    {
        Assert.Null(new RememberedColumns(File).Keep(CsvContent.Measures, Heads, Said));
        Assert.Null(new RememberedColumns(File).Keep(CsvContent.Measures, ["Other"], CsvChoices.None));
        CsvChoices again = new RememberedColumns(File).Of(CsvContent.Measures, Heads);
        Assert.Equal(Said.Columns, again.Columns.AsEnumerable());
        Assert.Equal((Said.Days, Said.Decimals, Said.Deficits), (again.Days, again.Decimals, again.Deficits));
        Assert.Empty(new RememberedColumns(File).Of(CsvContent.Sessions, Heads).Columns);
        Assert.Empty(new RememberedColumns(File).Of(CsvContent.Measures, ["Visit day"]).Columns);
    }

    [Fact]
    public void What_is_said_later_counts()
    {
        RememberedColumns columns = new(File);
        columns.Keep(CsvContent.Measures, Heads, Said);
        columns.Keep(CsvContent.Measures, Heads, new CsvChoices { Columns = [("Bend", "ignore")] }.Over(columns.Of(CsvContent.Measures, Heads)));
        Assert.Equal([("Bend", "ignore"), ("Visit day", "date")], columns.Of(CsvContent.Measures, Heads).Columns);
        Assert.Equal(DayOrder.DayFirst, columns.Of(CsvContent.Measures, Heads).Days);
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{\"schema\":\"columns/2\",\"files\":[]}")]
    [InlineData("{\"schema\":\"columns/1\",\"files\":[{}]}")]
    [InlineData("{\"schema\":\"columns/1\",\"files\":[{\"content\":\"Measures\",\"heads\":[1],\"columns\":[]}]}")]
    [InlineData("{\"schema\":\"columns/1\",\"schema\":\"columns/1\",\"files\":[]}")]
    public void A_file_that_is_something_else_remembers_nothing_and_is_left_as_it_is(string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(File)!);
        System.IO.File.WriteAllText(File, text);
        Assert.Empty(new RememberedColumns(File).Of(CsvContent.Measures, Heads).Columns);
        Assert.NotNull(new RememberedColumns(File).Keep(CsvContent.Measures, Heads, Said));
        Assert.Equal(text, System.IO.File.ReadAllText(File));
    }
}
