namespace Progression.Core.People;

/// <summary>
/// Counting from the operation. Day 0 is the operation; post-op week n, from 1, is days 7(n-1) to 7n-1, so week 1 starts on the day of the operation.
/// A milestone "at 2 weeks" falls on day 14 and is due by the end of week 2.
/// </summary>
public static class PostOpWeek
{
    /// <summary>Longest plan, in weeks.</summary>
    public const int Longest = 26;

    /// <summary>The post-op day of a date; negative before the operation.</summary>
    public static int DayOf(DateOnly operation, DateOnly date) => date.DayNumber - operation.DayNumber;

    /// <summary>The post-op week of a date, from 1; 0 or less before the operation.</summary>
    public static int Of(DateOnly operation, DateOnly date) => (int)Math.Floor(DayOf(operation, date) / 7.0) + 1;

    /// <summary>First day of a week.</summary>
    public static DateOnly Start(DateOnly operation, int week) => operation.AddDays(7 * (week - 1));

    /// <summary>Last day of a week.</summary>
    public static DateOnly End(DateOnly operation, int week) => operation.AddDays((7 * week) - 1);
}
