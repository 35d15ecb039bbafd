using System.Globalization;

namespace Progression.Core.Entry;

/// <summary>
/// Reads a day as people type it: year-month-day (ISO 8601 calendar date), "12 nov", "nov 12 2026", "tue", "last tue", "today", "-3" (days from today),
/// "op+7" or "d7" (days from the operation), and "25.11." or "11/25" where only one order of day and month makes a day. Which day and which
/// month is meant is never guessed. A day without a year is the one nearest to today, of those the field takes where there are any.
/// </summary>
public static class DayText
{
    /// <summary>Reads a day.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    /// <param name="range">The days allowed, and today.</param>
    public static Entered<Choice<DateOnly>> Read(string field, string? text, DayRange range)
    {
        ArgumentNullException.ThrowIfNull(range);
        string trimmed = (text ?? "").Trim(' ');
        (DateOnly? day, string? wrong) = trimmed.Length == 0 ? (null, "The day is missing.") : DayWord.Understand(trimmed.ToLowerInvariant(), range);
        wrong ??= day is null ? "This is not a day."
            : day < range.First ? $"The day, {Written(day.Value)}, is too early."
            : day > range.Last ? $"The day, {Written(day.Value)}, is too late."
            : null;
        return wrong is null
            ? Entered<Choice<DateOnly>>.Good(new Choice<DateOnly>(day!.Value))
            : Entered<Choice<DateOnly>>.Bad(new Problem(field, wrong, range.Allowed, Found.Of(text ?? "")));
    }

    /// <summary>A day as a message tells it: "Thu 12 Nov 2026".</summary>
    public static string Written(DateOnly day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
}
