using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.People;

namespace Progression.App.Forms;

/// <summary>Days as forms show them.</summary>
public static class DayWords
{
    /// <summary>A day beside a value: "18 Nov".</summary>
    public static string Short(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    /// <summary>A day as it is typed: "2026-11-18".</summary>
    public static string Typed(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>The day that was understood and where it lies: "Wed 25 Nov 2026, day 23, week 4"; before the operation "Sat 24 Oct 2026, 9 days before".</summary>
    public static string Place(DateOnly operation, DateOnly day)
    {
        int at = PostOpWeek.DayOf(operation, day);
        string name = DayText.Written(day);
        return at < 0 ? $"{name}, {-at} days before" : $"{name}, day {at}, week {PostOpWeek.Of(operation, day)}";
    }
}
