using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class DayTextTests
{
    private static readonly DateOnly First = new(2026, 1, 31);
    private static readonly DateOnly Last = new(2026, 3, 1);

    // ISO 8601-1:2019 calendar date, extended format: four, two and two digits with hyphens.
    [Theory]
    [InlineData("2026-01-31")]
    [InlineData(" 2026-02-28 ")]
    [InlineData("2026-03-01")]
    public void Takes_a_day_within_the_span_ends_included(string text) =>
        Assert.Equal(text.Trim(), $"{DayText.Read("day", text, First, Last).Value!.Value:yyyy-MM-dd}");

    [Theory]
    [InlineData("2026-01-30", "too early")]
    [InlineData("2026-03-02", "too late")]
    [InlineData("2026-02-29", "not a day")]
    [InlineData("26-02-01", "not a day")]
    [InlineData("2026-2-1", "not a day")]
    [InlineData("01.02.2026", "not a day")]
    [InlineData("", "missing")]
    [InlineData(null, "missing")]
    public void Refuses_anything_else_and_names_the_span(string? text, string wrong)
    {
        Problem problem = Assert.Single(DayText.Read("day", text, First, Last).Problems);
        Assert.Contains(wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.Equal("a day from 2026-01-31 to 2026-03-01, written year-month-day", problem.Allowed);
    }
}
