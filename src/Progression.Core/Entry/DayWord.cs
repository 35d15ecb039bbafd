using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Progression.Core.Entry;

/// <summary>Each way of writing a day, one after the other. A text is lower case and without spaces around it.</summary>
internal static partial class DayWord
{
    // More days than any plan has, so that a slip of the keyboard never leaves the calendar.
    private const int MostDays = 4000;
    private const int LongestText = 40;
    private const int ShortestName = 3;

    private static readonly DateTimeFormatInfo English = CultureInfo.InvariantCulture.DateTimeFormat;

    /// <summary>The day, or why it is none where that is known; neither when the text is of no known form.</summary>
    public static (DateOnly? Day, string? Wrong) Understand(string text, DayRange range) => text.Length > LongestText ? default
        : Named(text, range) is { } named ? (named, null)
        : Counted().Match(text) is { Success: true } counted ? FromThere(counted, range)
        : Iso().Match(text) is { Success: true } iso ? Calendar(Whole(iso, 1), Whole(iso, 2), Whole(iso, 3))
        : DayFirst().Match(text) is { Success: true } first ? WithMonth(Whole(first, 1), first.Groups[2].Value, (first.Groups[3].Value, range))
        : MonthFirst().Match(text) is { Success: true } second ? WithMonth(Whole(second, 2), second.Groups[1].Value, (second.Groups[3].Value, range))
        : Numbers().Match(text) is { Success: true } numbers ? EitherOrder(numbers, range)
        : default;

    private static DateOnly? Named(string text, DayRange range) => text switch
    {
        "today" => range.Today,
        "yesterday" => range.Today.AddDays(-1),
        "tomorrow" => range.Today.AddDays(1),
        _ => Weekday().Match(text) is { Success: true } found && WeekdayOf(found.Groups[2].Value) is { } day ? OnWeekday(day, found.Groups[1].Value, range) : null,
    };

    // "tue" is the nearest that has been or is today, in a field about days to come the nearest to come; "last" and "next" leave today out.
    private static DateOnly OnWeekday(DayOfWeek day, string which, DayRange range)
    {
        bool back = which == "last" || (which.Length == 0 && range.IsPast);
        int apart = back ? ((int)range.Today.DayOfWeek - (int)day + 7) % 7 : ((int)day - (int)range.Today.DayOfWeek + 7) % 7;
        int days = apart == 0 && which.Length > 0 ? 7 : apart;
        return range.Today.AddDays(back ? -days : days);
    }

    private static (DateOnly?, string?) FromThere(Match counted, DayRange range)
    {
        string from = counted.Groups[1].Value;
        int days = Whole(counted, 3) is int count and <= MostDays ? count : MostDays;
        int signed = counted.Groups[2].Value == "-" ? -days : days;
        return from.Length == 0 && counted.Groups[2].Length > 0 ? (range.Today.AddDays(signed), null)
            : from.Length == 0 ? default
            : range.Operated is { } operated ? (operated.AddDays(signed), null)
            : (null, "The day of the operation is not known yet, so no day can be counted from it.");
    }

    private static (DateOnly?, string?) WithMonth(int? day, string name, (string Year, DayRange Range) of) => MonthOf(name) is not int month ? default
        : of.Year.Length > 0 ? Calendar(int.Parse(of.Year, CultureInfo.InvariantCulture), month, day)
        : Nearest(month, day, of.Range) is { } nearest ? (nearest, null)
        : (null, "There is no such day.");

    // Where both orders make a day, the two days differ or the text would not matter: it is asked back.
    private static (DateOnly?, string?) EitherOrder(Match numbers, DayRange range)
    {
        (int? one, int? two) = (Whole(numbers, 1), Whole(numbers, 2));
        int? year = numbers.Groups[3].Length > 0 ? Whole(numbers, 3) : null;
        DateOnly? dayFirst = year is int known ? Calendar(known, two, one).Day : Nearest(two, one, range);
        DateOnly? monthFirst = year is int same ? Calendar(same, one, two).Day : Nearest(one, two, range);
        return dayFirst is { } either && monthFirst is { } other && either != other
            ? (null, $"This can be {either.ToString("d MMM", English)} or {other.ToString("d MMM", English)}.")
            : (dayFirst ?? monthFirst) is { } only ? (only, null)
            : (null, "There is no such day.");
    }

    private static (DateOnly? Day, string? Wrong) Calendar(int? year, int? month, int? day) =>
        year is int y and >= 1 and <= 9999 && month is int m and >= 1 and <= 12 && day is int d and >= 1 && d <= DateTime.DaysInMonth(y, m)
            ? (new DateOnly(y, m, d), null)
            : (null, "There is no such day.");

    private static DateOnly? Nearest(int? month, int? day, DayRange range)
    {
        ImmutableArray<DateOnly> days = [.. Enumerable.Range(range.Today.Year - 4, 9).Select(year => Calendar(year, month, day).Day).OfType<DateOnly>()];
        ImmutableArray<DateOnly> allowed = [.. days.Where(one => one >= range.First && one <= range.Last)];
        return (allowed.IsEmpty ? days : allowed).OrderBy(one => Math.Abs(one.DayNumber - range.Today.DayNumber)).Select(one => (DateOnly?)one).FirstOrDefault();
    }

    private static int? MonthOf(string name) => Place(name == "sept" ? "sep" : name, English.MonthNames) + 1;

    private static DayOfWeek? WeekdayOf(string name) => (DayOfWeek?)Place(name, English.DayNames);

    // Three letters tell months and weekdays apart.
    private static int? Place(string name, string[] names)
    {
        int at = name.Length < ShortestName ? -1 : Array.FindIndex(names, one => one.StartsWith(name, StringComparison.OrdinalIgnoreCase));
        return at < 0 ? null : at;
    }

    private static int? Whole(Match match, int group) =>
        int.TryParse(match.Groups[group].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int value) ? value : null;

    [GeneratedRegex(@"^(?:(last|next) )?([a-z]{3,9})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Weekday();

    [GeneratedRegex(@"^(op|day|d)? *([+-])? *([0-9]{1,5})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Counted();

    [GeneratedRegex(@"^([0-9]{4})-([0-9]{1,2})-([0-9]{1,2})\z", RegexOptions.CultureInvariant)]
    private static partial Regex Iso();

    [GeneratedRegex(@"^([0-9]{1,2})(?:st|nd|rd|th)?[ .-]*([a-z]{3,9})\.?(?:,?[ -]*([0-9]{4}))?\z", RegexOptions.CultureInvariant)]
    private static partial Regex DayFirst();

    [GeneratedRegex(@"^([a-z]{3,9})\.?[ -]*([0-9]{1,2})(?:st|nd|rd|th)?(?:,?[ -]+([0-9]{4}))?\z", RegexOptions.CultureInvariant)]
    private static partial Regex MonthFirst();

    [GeneratedRegex(@"^([0-9]{1,2})[./] *([0-9]{1,2})(?:[./]? *([0-9]{4})?)\z", RegexOptions.CultureInvariant)]
    private static partial Regex Numbers();
}
