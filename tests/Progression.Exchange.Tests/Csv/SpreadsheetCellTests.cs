using Bogus;
using Progression.Exchange.Csv;

namespace Progression.Exchange.Tests.Csv;

public sealed class SpreadsheetCellTests
{
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("+49 20 5", "'+49 20 5")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("\r=1", "'\r=1")]
    [InlineData("  =1", "'  =1")]
    [InlineData("'=1", "''=1")]
    [InlineData("\uFF1D1", "'\uFF1D1")]
    [InlineData("a=1", "a=1")]
    [InlineData("it's", "it's")]
    [InlineData("'quoted'", "'quoted'")]
    [InlineData("", "")]
    public void What_a_spreadsheet_would_run_gets_an_apostrophe(string text, string cell) => Assert.Equal(cell, SpreadsheetCell.Guarded(text));

    [Fact]
    public void Whatever_the_text_it_comes_back()
    {
        Randomizer random = new(20_261_125);
        for (int n = 0; n < 20_000; n++)
        {
            string text = string.Concat(Enumerable.Range(0, random.Int(0, 6)).Select(_ => random.ArrayElement(["=", "'", " ", "-", "+", "@", "\t", "\r", "\n", "a", "1", "\uFF0B"])));
            Assert.Equal(text, SpreadsheetCell.Plain(SpreadsheetCell.Guarded(text)));
        }
    }
}
