using Progression.Core.Entry;
using NodaTime;
using NodaTime.TimeZones;

namespace Progression.Exchange.Calendar;

/// <summary>A time zone by its name in the time zone database, which travels with the program.</summary>
public sealed record CalendarZone
{
    private CalendarZone(string id) => Id = id;

    /// <summary>Its name.</summary>
    public string Id { get; }

    /// <summary>Coordinated universal time.</summary>
    public static CalendarZone Universal { get; } = new("UTC");

    /// <summary>Reads a name; of one that is nearly right the right one is told.</summary>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The name as typed.</param>
    public static Entered<CalendarZone> Read(string field, string? text)
    {
        string name = (text ?? "").Trim();
        if (DateTimeZoneProviders.Tzdb.Ids.FirstOrDefault(id => id.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return Entered<CalendarZone>.Good(TzdbDateTimeZoneSource.Default.CanonicalIdMap[known] == "Etc/UTC" ? Universal : new CalendarZone(known));
        }

        string near = NearestWord.To(name, DateTimeZoneProviders.Tzdb.Ids) is { } word ? $" Did you mean \"{word}\"?" : "";
        return Entered<CalendarZone>.Bad(new Problem(field, "There is no such time zone." + near, "a name of the time zone database, as Europe/London or America/New_York", Found.Of(name)));
    }

    /// <summary>The zone of the machine; universal time where its name says nothing to others.</summary>
    public static CalendarZone OfSystem(TimeZoneInfo local)
    {
        ArgumentNullException.ThrowIfNull(local);
        return Read("", local.Id).Value ?? Universal;
    }
}
