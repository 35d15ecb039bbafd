using System.Globalization;

namespace Progression.Core.Entry;

/// <summary>Reads a day as year-month-day (ISO 8601 calendar date), so that no country's order of day and month is guessed.</summary>
public static class DayText
{
    /// <summary>Reads a day.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed; null or blank is a missing value, which is refused.</param>
    /// <param name="first">The first day allowed.</param>
    /// <param name="last">The last day allowed.</param>
    public static Entered<Choice<DateOnly>> Read(string field, string? text, DateOnly first, DateOnly last)
    {
        string trimmed = (text ?? "").Trim(' ');
        string? wrong = !DateOnly.TryParseExact(trimmed, "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? (trimmed.Length == 0 ? "The day is missing." : "This is not a day written as year-month-day.")
            : day < first ? "The day is too early."
            : day > last ? "The day is too late."
            : null;
        return wrong is null
            ? Entered<Choice<DateOnly>>.Good(new Choice<DateOnly>(day))
            : Entered<Choice<DateOnly>>.Bad(new Problem(field, wrong, Allowed(first, last), Found.Of(text ?? "")));
    }

    /// <summary>What is allowed, in words.</summary>
    public static string Allowed(DateOnly first, DateOnly last) => $"a day from {first:yyyy-MM-dd} to {last:yyyy-MM-dd}, written year-month-day";
}
