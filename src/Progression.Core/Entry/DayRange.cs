namespace Progression.Core.Entry;

/// <summary>Which days a field takes, and from where days that are told in words are counted.</summary>
/// <param name="First">The first day allowed.</param>
/// <param name="Last">The last day allowed.</param>
/// <param name="Today">The present day.</param>
public sealed record DayRange(DateOnly First, DateOnly Last, DateOnly Today)
{
    /// <summary>The day of the operation; null where it is not known yet, and no day can be counted from it.</summary>
    public DateOnly? Operated { get; init; }

    /// <summary>Whether the field asks for a day that has been: then a weekday is the last such day and not the next.</summary>
    public bool IsPast => Last <= Today;

    /// <summary>What is allowed, in words.</summary>
    public string Allowed => $"a day from {First:yyyy-MM-dd} to {Last:yyyy-MM-dd}, as {Last:yyyy-MM-dd}, 12 nov, tue, today or -3{(Operated is null ? "" : ", op+7 or d7")}";
}
