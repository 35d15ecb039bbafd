using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class DayTextTests
{
    // 25 November 2026 is a Wednesday (a perpetual calendar); the operation was 23 days before.
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly DayRange Past = new(new(2026, 5, 28), Today, Today) { Operated = new(2026, 11, 2) };
    private static readonly DayRange Ahead = Past with { Last = new(2027, 5, 2) };

    // ISO 8601-1:2019 calendar date, extended format: four, two and two digits with hyphens. The other forms are common practice, no source.
    [Theory]
    [InlineData("2026-05-28", "2026-05-28")]
    [InlineData(" 2026-11-25 ", "2026-11-25")]
    [InlineData("2026-6-1", "2026-06-01")]
    [InlineData("12 nov", "2026-11-12")]
    [InlineData("12 NOVEMBER 2026", "2026-11-12")]
    [InlineData("12nov", "2026-11-12")]
    [InlineData("Nov 12", "2026-11-12")]
    [InlineData("nov 12, 2026", "2026-11-12")]
    [InlineData("12th Nov.", "2026-11-12")]
    [InlineData("3 sept", "2026-09-03")]
    [InlineData("25.11.", "2026-11-25")]
    [InlineData("13/11", "2026-11-13")]
    [InlineData("11/13", "2026-11-13")]
    [InlineData("11/11", "2026-11-11")]
    [InlineData("25.11.2026", "2026-11-25")]
    [InlineData("today", "2026-11-25")]
    [InlineData("Yesterday", "2026-11-24")]
    [InlineData("wed", "2026-11-25")]
    [InlineData("tue", "2026-11-24")]
    [InlineData("Thursday", "2026-11-19")]
    [InlineData("last tue", "2026-11-24")]
    [InlineData("last wed", "2026-11-18")]
    [InlineData("-3", "2026-11-22")]
    [InlineData("op+7", "2026-11-09")]
    [InlineData("OP + 0", "2026-11-02")]
    [InlineData("d21", "2026-11-23")]
    [InlineData("day 21", "2026-11-23")]
    public void Takes_a_day_as_people_type_it(string text, string day) => Assert.Equal(day, $"{DayText.Read("day", text, Past).Value!.Value:yyyy-MM-dd}");

    [Theory]
    [InlineData("tue", "2026-12-01")]
    [InlineData("wed", "2026-11-25")]
    [InlineData("next wed", "2026-12-02")]
    [InlineData("last tue", "2026-11-24")]
    [InlineData("+7", "2026-12-02")]
    [InlineData("tomorrow", "2026-11-26")]
    [InlineData("3 jan", "2027-01-03")]
    [InlineData("op+42", "2026-12-14")]
    public void In_a_field_about_days_to_come_a_weekday_is_the_next(string text, string day) =>
        Assert.Equal(day, $"{DayText.Read("day", text, Ahead).Value!.Value:yyyy-MM-dd}");

    [Theory]
    [InlineData("2026-05-27", "too early")]
    [InlineData("2026-11-26", "Thu 26 Nov 2026, is too late")]
    [InlineData("+1", "too late")]
    [InlineData("12 dec", "Sat 12 Dec 2026, is too late")]
    [InlineData("2026-02-29", "no such day")]
    [InlineData("31 jun", "no such day")]
    [InlineData("32.13.", "no such day")]
    [InlineData("12/11", "can be 12 Nov or 11 Dec")]
    [InlineData("12.11.", "can be 12 Nov or 11 Dec")]
    [InlineData("01.02.2026", "can be 1 Feb or 2 Jan")]
    [InlineData("26-02-01", "not a day")]
    [InlineData("7", "not a day")]
    [InlineData("tu", "not a day")]
    [InlineData("soon", "not a day")]
    [InlineData("12 nov 26", "not a day")]
    [InlineData("\u0661\u0662 nov", "not a day")]
    [InlineData("-99999", "too early")]
    [InlineData("", "missing")]
    [InlineData(null, "missing")]
    public void Refuses_what_is_no_day_or_could_be_two_and_names_the_span(string? text, string wrong)
    {
        Problem problem = Assert.Single(DayText.Read("day", text, Past).Problems);
        Assert.Contains(wrong, problem.Wrong, StringComparison.Ordinal);
        Assert.StartsWith("a day from 2026-05-28 to 2026-11-25, as", problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Counts_no_day_from_an_operation_that_is_not_known() =>
        Assert.Contains("not known yet", DayText.Read("day", "op+7", Past with { Operated = null }).Problems[0].Wrong, StringComparison.Ordinal);

    [Fact]
    public void The_29th_of_February_is_the_one_of_a_leap_year() =>
        Assert.Equal(new DateOnly(2028, 2, 29), DayText.Read("day", "29 feb", Ahead with { Last = new(2028, 12, 31) }).Value!.Value);
}
