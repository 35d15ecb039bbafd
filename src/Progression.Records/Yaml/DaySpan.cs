using System.Globalization;

namespace Progression.Records.Yaml;

/// <summary>The days a field takes, both ends included.</summary>
/// <param name="First">The first day.</param>
/// <param name="Last">The last day.</param>
internal sealed record DaySpan(DateOnly First, DateOnly Last)
{
    /// <summary>What is wrong with a day before the first.</summary>
    public string Early { get; init; } = "The day is too early.";

    /// <summary>What is wrong with a day after the last.</summary>
    public string Late { get; init; } = "The day lies in the future.";

    /// <summary>What is allowed, in words.</summary>
    public string Words => $"a day from {Text(First)} to {Text(Last)}";

    /// <summary>A day as year-month-day.</summary>
    public static string Text(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);
}
