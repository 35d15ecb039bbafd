using Progression.Core.People;

namespace Progression.Core.Tests.People;

/// <summary>Day 0 is the operation; week n is days 7(n-1) to 7n-1.</summary>
public sealed class PostOpWeekTests
{
    private static readonly DateOnly Operation = new(2026, 2, 26);

    [Theory]
    [InlineData(-8, -1)]
    [InlineData(-7, 0)]
    [InlineData(-1, 0)]
    [InlineData(0, 1)]
    [InlineData(6, 1)]
    [InlineData(7, 2)]
    [InlineData(41, 6)]
    [InlineData(42, 7)]
    public void A_day_belongs_to_its_week(int day, int week) => Assert.Equal(week, PostOpWeek.Of(Operation, Operation.AddDays(day)));

    [Fact] // 26 Feb 2026 is a Thursday; February has 28 days.
    public void Weeks_start_on_the_weekday_of_the_operation()
    {
        Assert.Equal(new DateOnly(2026, 2, 26), PostOpWeek.Start(Operation, 1));
        Assert.Equal(new DateOnly(2026, 3, 4), PostOpWeek.End(Operation, 1));
        Assert.Equal(new DateOnly(2026, 3, 5), PostOpWeek.Start(Operation, 2));
        Assert.Equal(new DateOnly(2026, 4, 8), PostOpWeek.End(Operation, 6));
    }

    [Fact] // A course from day 2 to 42 inclusive has 41 days: Avramidis 2003, worked example 11 of the project's reference.
    public void Days_are_counted_from_zero() =>
        Assert.Equal(41, 1 + PostOpWeek.DayOf(Operation, new DateOnly(2026, 4, 9)) - PostOpWeek.DayOf(Operation, new DateOnly(2026, 2, 28)));
}
