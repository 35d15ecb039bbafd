using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using Progression.Core.Caseload;
using Progression.Core.Doses;
using Progression.Core.People;
using Progression.Core.Plans;

namespace Progression.Exchange.Calendar;

/// <summary>
/// The sessions and reassessments of a plan as a calendar by RFC 5545. An entry has the same id in every calendar of the case, made from the case and the day
/// or, for a reassessment, its number, and the revision of the plan as its sequence; so a newer calendar replaces an older one entry by entry. Titles tell
/// neither diagnosis nor, unless that is asked for, the code.
/// </summary>
public static class PlanCalendar
{
    // Shorter or longer entries would be odd in a calendar. Common practice, no source.
    private const int FewestMinutes = 15;
    private const int MostMinutes = 240;

    /// <summary>The text of the calendar, lines ended by CR LF; null where nothing lies ahead, because a calendar has at least one entry (section 3.6).</summary>
    public static string? Of(CalendarOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        CalendarZone zone = CalendarZone.Read("zone", order.Zone).Value ?? throw new ArgumentException("There is no such time zone.", nameof(order));
        Ical.Net.Calendar calendar = new() { ProductId = "-//Progression//Plan//EN" };
        ImmutableArray<CalendarEvent> entries = [.. Sessions(order, zone).Concat(Reassessments(order)).OrderBy(entry => entry.Start!.Value).ThenBy(entry => entry.Summary, StringComparer.Ordinal)];
        if (entries.IsEmpty)
        {
            return null;
        }

        ImmutableArray<CalendarEvent> timed = [.. entries.Where(entry => entry.Start!.HasTime)];
        if (zone != CalendarZone.Universal && timed.Length > 0)
        {
            calendar.AddTimeZone(ZonePart.Of(zone, timed[0].Start!.Value, timed[^1].End!.Value));
        }

        calendar.Events.AddRange(entries);
        return new CalendarSerializer().SerializeToString(calendar);
    }

    private static IEnumerable<CalendarEvent> Sessions(CalendarOrder order, CalendarZone zone)
    {
        ImmutableArray<PlannedDay> days = Coming(order.Plan, order);
        HashSet<DateOnly> planned = [.. days.Select(day => day.Date)];
        IEnumerable<PlannedDay> dropped = order.Former.Reverse().SelectMany(plan => Coming(plan, order)).Where(day => !planned.Contains(day.Date)).DistinctBy(day => day.Date);
        ImmutableArray<WeekFigures> weeks = PlanFigures.Of(order.Plan, order.Library);
        return days.Select(day => Session(order, zone, (day, Minutes(weeks[PostOpWeek.Of(order.Plan.Operation, day.Date) - 1]))))
            .Concat(dropped.Select(day => Session(order, zone, (day, FewestMinutes), "CANCELLED")));
    }

    private static ImmutableArray<PlannedDay> Coming(PlanRevision plan, CalendarOrder order) => [.. PlannedDay.Of(plan).Where(day => day.Date >= Today(order))];

    private static CalendarEvent Session(CalendarOrder order, CalendarZone zone, (PlannedDay Day, double Minutes) of, string status = "CONFIRMED")
    {
        PlannedDay day = of.Day;
        CalendarEvent entry = Entry(order, FormattableString.Invariant($"session {day.Date:yyyy-MM-dd}"), day.StimSessions > 0 ? "Exercise with stim" : "Exercise", status);
        DateTime start = day.Date.ToDateTime(order.At);
        entry.Start = new CalDateTime(start, zone.Id);
        entry.End = new CalDateTime(start.AddMinutes(of.Minutes), zone.Id);
        entry.Description = day.StimSessions > 1 ? string.Create(CultureInfo.InvariantCulture, $"{day.StimSessions} sessions with stim on this day.") : null;
        return entry;
    }

    // As long as the longest day of the week asks for, in steps of five minutes.
    private static double Minutes(WeekFigures week) => Math.Clamp(5 * Math.Ceiling(week.MinutesOnLongestDay / 5), FewestMinutes, MostMinutes);

    /// <summary>A reassessment is due on its day and has no hour. One that a visit in between has made needless is called off.</summary>
    private static IEnumerable<CalendarEvent> Reassessments(CalendarOrder order)
    {
        DateOnly operation = order.Plan.Operation;
        DateOnly end = PostOpWeek.End(operation, order.Plan.Weeks);
        ImmutableArray<DateOnly> days = [.. ReassessmentDays.Until(order.Patient, order.Library, end).Where(day => day >= Today(order))];
        HashSet<int> numbers = [.. days.Select(day => ReassessmentDays.NumberOf(operation, day, order.Library))];
        // What an earlier calendar had: the same days as if no visit had been.
        DateOnly last = order.Former.Select(plan => PostOpWeek.End(operation, plan.Weeks)).Append(operation).Max();
        IEnumerable<DateOnly> dropped = ReassessmentDays.Until(order.Patient with { Assessments = [] }, order.Library, last)
            .Where(day => day >= Today(order) && !numbers.Contains(ReassessmentDays.NumberOf(operation, day, order.Library)));
        return days.Select(day => (day, "CONFIRMED")).Concat(dropped.Select(day => (day, "CANCELLED"))).Select(one =>
        {
            CalendarEvent entry = Entry(order, FormattableString.Invariant($"reassessment {ReassessmentDays.NumberOf(operation, one.day, order.Library)}"), "Reassessment", one.Item2);
            entry.Start = new CalDateTime(one.day);
            entry.Transparency = "TRANSPARENT";
            return entry;
        });
    }

    private static CalendarEvent Entry(CalendarOrder order, string what, string title, string status) => new()
    {
        Uid = Id(order, what),
        Summary = order.WithCode ? $"{order.Patient.Code.Text}: {title}" : title,
        Status = status,
        Sequence = order.Revision,
        DtStamp = new CalDateTime(order.Now.UtcDateTime, "UTC"),
        Class = "PRIVATE",
    };

    // Nothing of the case can be read from it, and it is the same on every machine.
    private static string Id(CalendarOrder order, string what)
    {
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes(FormattableString.Invariant($"progression calendar {order.Patient.Code.Text} {order.Plan.Operation:yyyy-MM-dd} {what}")));
        return new Guid(hash.AsSpan(0, 16), bigEndian: true).ToString();
    }

    private static DateOnly Today(CalendarOrder order) => DateOnly.FromDateTime(order.Now.DateTime);
}
