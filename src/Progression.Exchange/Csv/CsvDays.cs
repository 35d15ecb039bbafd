using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Progression.Exchange.Import;

namespace Progression.Exchange.Csv;

/// <summary>
/// The days of a file. The order of year, month and day is decided once, by what can be read in one way only; a file in which it is mixed is refused, and where
/// every day could be read in two ways the person is asked.
/// </summary>
internal sealed partial class CsvDays
{
    private const string Allowed = "days in one order in the whole file: 2026-03-09, or 9/3/2026, or 3/9/2026";

    private readonly Dictionary<int, DateOnly> _days = [];
    private readonly List<ImportProblem> _problems = [];

    private CsvDays()
    {
    }

    /// <summary>What is wrong with them.</summary>
    public IReadOnlyList<ImportProblem> Problems => _problems;

    /// <summary>The day of a row; null where it has none that can be read.</summary>
    public DateOnly? Of(CsvLine line) => _days.TryGetValue(line.Number, out DateOnly day) ? day : null;

    /// <summary>Reads the days of all rows.</summary>
    /// <param name="lines">The rows.</param>
    /// <param name="said">The order the person said; null for none.</param>
    public static CsvDays Read(ImmutableArray<CsvLine> lines, DayOrder? said)
    {
        CsvDays days = new();
        ImmutableArray<CsvCell> cells = [.. lines.Select(line => line[CsvField.Date]).OfType<CsvCell>()];
        ImmutableArray<CsvCell> yearFirst = [.. cells.Where(cell => YearFirst().IsMatch(cell.Text))];
        ImmutableArray<CsvCell> yearLast = [.. cells.Where(cell => YearLast().IsMatch(cell.Text))];
        days._problems.AddRange(cells.Except(yearFirst).Except(yearLast).Select(cell => cell.Refused("This is not a day as files write it.", Allowed)));
        if (yearFirst.Length > 0 && yearLast.Length > 0)
        {
            CsvCell other = yearFirst.Length > yearLast.Length ? yearLast[0] : yearFirst[0];
            days._problems.Add(other.Refused($"Days are written in more than one order: the year first in {yearFirst[0].Place.At}, last in {yearLast[0].Place.At}.", Allowed));
            return days;
        }

        days.Take(yearFirst, YearFirst(), (1, 2, 3));
        if (yearLast.Length > 0 && days.Order(yearLast, said) is { } order)
        {
            days.Take(yearLast, YearLast(), Groups(order));
        }

        return days;
    }

    private void Take(ImmutableArray<CsvCell> cells, Regex form, (int Year, int Month, int Day) groups)
    {
        foreach (CsvCell cell in cells)
        {
            if (Day(form.Match(cell.Text), groups) is { } day)
            {
                _days[cell.Place.Order] = day;
            }
            else
            {
                _problems.Add(cell.Refused("There is no such day.", Allowed));
            }
        }
    }

    private DayOrder? Order(ImmutableArray<CsvCell> cells, DayOrder? said)
    {
        if (said is not null)
        {
            return said;
        }

        CsvCell? dayFirst = cells.FirstOrDefault(cell => IsDay(cell, DayOrder.DayFirst) && !IsDay(cell, DayOrder.MonthFirst));
        CsvCell? monthFirst = cells.FirstOrDefault(cell => IsDay(cell, DayOrder.MonthFirst) && !IsDay(cell, DayOrder.DayFirst));
        if (dayFirst is not null && monthFirst is not null)
        {
            _problems.Add((dayFirst.Place.Order > monthFirst.Place.Order ? dayFirst : monthFirst).Refused(
                $"Days are written in more than one order: the day first in {dayFirst.Place.At}, the month first in {monthFirst.Place.At}.", Allowed));
            return null;
        }

        if (dayFirst is not null || monthFirst is not null)
        {
            return dayFirst is not null ? DayOrder.DayFirst : DayOrder.MonthFirst;
        }

        CsvCell? either = cells.FirstOrDefault(cell => IsDay(cell, DayOrder.DayFirst) && Day(cell, DayOrder.DayFirst) != Day(cell, DayOrder.MonthFirst));
        if (either is null)
        {
            return DayOrder.DayFirst;
        }

        _problems.Add(either.Refused(
            string.Create(CultureInfo.InvariantCulture, $"This can be {Day(either, DayOrder.DayFirst):d MMM yyyy} or {Day(either, DayOrder.MonthFirst):d MMM yyyy}, and no day of the file tells which."),
            "--dates day-first, or --dates month-first"));
        return null;
    }

    private static bool IsDay(CsvCell cell, DayOrder order) => Day(cell, order) is not null;

    private static DateOnly? Day(CsvCell cell, DayOrder order) => Day(YearLast().Match(cell.Text), Groups(order));

    private static (int Year, int Month, int Day) Groups(DayOrder order) => order == DayOrder.DayFirst ? (3, 2, 1) : (3, 1, 2);

    private static DateOnly? Day(Match match, (int Year, int Month, int Day) groups)
    {
        (int year, int month, int day) = (Whole(groups.Year), Whole(groups.Month), Whole(groups.Day));
        return year is >= 1 and <= 9999 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;
        int Whole(int group) => int.Parse(match.Groups[group].ValueSpan, NumberStyles.None, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"^([0-9]{4})[-/.]([0-9]{1,2})[-/.]([0-9]{1,2})\z", RegexOptions.CultureInvariant)]
    private static partial Regex YearFirst();

    [GeneratedRegex(@"^([0-9]{1,2})[-/.]([0-9]{1,2})[-/.]([0-9]{4})\z", RegexOptions.CultureInvariant)]
    private static partial Regex YearLast();
}
