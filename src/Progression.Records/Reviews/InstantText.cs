using System.Globalization;

namespace Progression.Records.Reviews;

/// <summary>An instant as text: UTC, to the millisecond, so that texts sort as instants do.</summary>
internal static class InstantText
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public static string Of(DateTimeOffset at) => at.ToUniversalTime().ToString(Form, CultureInfo.InvariantCulture);

    /// <summary>The instant; null for another text.</summary>
    public static DateTimeOffset? Read(string? text) =>
        DateTimeOffset.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset at) ? at : null;

    /// <summary>An instant as it is kept.</summary>
    public static DateTimeOffset Cut(DateTimeOffset at)
    {
        DateTimeOffset utc = at.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMillisecond));
    }
}
