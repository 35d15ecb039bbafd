using Progression.Exchange.Csv;

namespace Progression.Exchange.Tests.Csv;

/// <summary>The examples are those of RFC 4180, section 2, rules 1 to 7 (from memory), with a header where it has none.</summary>
public sealed class CsvTableTests
{
    private static string[][] Cells(string text)
    {
        (CsvTable? table, var problems) = CsvTable.Of(text);
        Assert.Empty(problems);
        return [[.. table!.Heads], .. table.Rows.Select(row => row.Cells.ToArray())];
    }

    private static string Wrong(string text)
    {
        (CsvTable? table, var problems) = CsvTable.Of(text);
        Assert.Null(table);
        return problems[0].ToString();
    }

    [Fact]
    public void Rule_1_each_record_is_a_line_ended_by_CRLF() => Assert.Equal([["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]], Cells("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));

    [Fact]
    public void Rule_2_the_last_record_may_lack_its_line_end() => Assert.Equal([["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]], Cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"));

    [Fact]
    public void Rule_3_the_header_has_the_form_of_a_record() => Assert.Equal(
        [["field_name", "field_name2", "field_name3"], ["aaa", "bbb", "ccc"], ["zzz", "yyy", "xxx"]], Cells("field_name,field_name2,field_name3\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"));

    [Fact]
    public void Rule_4_spaces_are_part_of_a_cell() => Assert.Equal(["aaa ", " bbb", "ccc"], Cells("a,b,c\r\naaa , bbb,ccc\r\n")[1]);

    [Fact]
    public void Rule_5_cells_may_be_in_quotes() => Assert.Equal(["aaa", "bbb", "ccc"], Cells("a,b,c\r\n\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx")[1]);

    [Fact]
    public void Rule_6_a_cell_in_quotes_may_hold_commas_and_line_ends() => Assert.Equal(
        ["aaa", "b\r\nbb", "c,cc"], Cells("a,b,c\r\n\"aaa\",\"b\r\nbb\",\"c,cc\"\r\nzzz,yyy,xxx")[1]);

    [Fact]
    public void Rule_7_a_quote_in_a_cell_is_doubled() => Assert.Equal(["aaa", "b\"bb", "ccc"], Cells("a,b,c\r\n\"aaa\",\"b\"\"bb\",\"ccc\"")[1]);

    [Theory]
    [InlineData("a;b\n1;2\n", ';')]
    [InlineData("a\tb\r1\t2\r", '\t')]
    [InlineData("\"a,x\";\"b,x\";c\n1,5;2;3\n", ';')]
    [InlineData("a,b\n1,2\n", ',')]
    public void The_separator_is_found(string text, char separator) => Assert.Equal(separator, CsvTable.Of(text).Table!.Separator);

    [Fact]
    public void Rows_are_counted_as_a_spreadsheet_does_with_cells_of_several_lines_and_empty_lines() =>
        Assert.Equal([2, 4, 5], CsvTable.Of("a,b\r\n\"x\r\ny\",1\r\n\r\nz,2\r\nw,3\r\n").Table!.Rows.Select(row => row.Number));

    [Theory]
    [InlineData("", "The file is empty. Allowed: a header and at least one row. Found: nothing.")]
    [InlineData("just a letter to somebody\nwith two lines", "row 1: The first row is not the header of a table. Allowed: 2 to 200 columns, parted by comma, semicolon or tab. Found: \"1 cell\".")]
    [InlineData("a,b\r\n1\r\n", "row 2: The row has another number of cells than the header. Allowed: 2 cells. Found: \"1 cell\".")]
    [InlineData("a,b\r\n1,2\r\n1,2,3\r\n", "row 3: The row has another number of cells than the header. Allowed: 2 cells. Found: \"3 cells\".")]
    [InlineData("a,b\r\n2,b\"c\r\n", "row 2, cell 2: A quote stands in a cell that is not in quotes. Allowed: the whole cell in quotes, and each quote in it doubled. Found: \"b\".")]
    [InlineData("a,b\r\n2,\"b\"c\r\n3,4\r\n", "row 2, cell 2: Something stands after the closing quote of a cell. Allowed: a separator or the end of the line. Found: \"b\".")]
    [InlineData("a,b\r\n1,2\r\n3,\"never closed\r\n4,5\r\n", "row 3, cell 2: A quote that is opened here is never closed. Allowed: a closing quote. Found: \"never closed��4,5��\".")]
    public void What_is_not_a_table_is_refused_by_row_and_cell(string text, string told) => Assert.Equal(told, Wrong(text));
}
