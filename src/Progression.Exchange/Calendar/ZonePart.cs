using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using NodaTime;
using NodaTime.TimeZones;
using Duration = NodaTime.Duration;

namespace Progression.Exchange.Calendar;

/// <summary>
/// A time zone as a calendar carries it: every offset that holds in its span, each from its own moment on, and no rule that repeats. The calendar library's
/// own way, a yearly rule, is wrong where the clocks follow another calendar or the rule has changed: Casablanca, Scoresbysund, Dublin, Cairo.
/// </summary>
internal static class ZonePart
{
    /// <summary>The zone from a day before the first time to a day after the last.</summary>
    public static VTimeZone Of(CalendarZone zone, DateTime first, DateTime last)
    {
        DateTimeZone known = DateTimeZoneProviders.Tzdb[zone.Id];
        VTimeZone part = new() { TzId = zone.Id };
        Interval span = new(At(first).Minus(Duration.FromDays(1)), At(last).Plus(Duration.FromDays(1)));
        foreach (ZoneInterval interval in known.GetZoneIntervals(span))
        {
            part.Children.Add(Observance(interval, interval.HasStart ? known.GetUtcOffset(interval.Start - Duration.Epsilon) : interval.WallOffset));
        }

        return part;
    }

    private static Ical.Net.VTimeZoneInfo Observance(ZoneInterval interval, Offset before)
    {
        // A moment is written as the clocks showed it before they were changed.
        DateTime start = interval.HasStart ? interval.Start.WithOffset(before).LocalDateTime.ToDateTimeUnspecified() : new DateTime(1970, 1, 1);
        return new Ical.Net.VTimeZoneInfo
        {
            Name = interval.Savings == Offset.Zero ? "STANDARD" : "DAYLIGHT",
            Start = new CalDateTime(start),
            TimeZoneName = interval.Name,
            OffsetFrom = new UtcOffset(before.ToTimeSpan()),
            OffsetTo = new UtcOffset(interval.WallOffset.ToTimeSpan()),
        };
    }

    private static Instant At(DateTime local) => Instant.FromDateTimeUtc(DateTime.SpecifyKind(local, DateTimeKind.Utc));
}
