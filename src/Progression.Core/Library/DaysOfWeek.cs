using System.Collections.Immutable;

namespace Progression.Core.Library;

/// <summary>A set of days of the week. Two sets with the same days are equal.</summary>
public readonly record struct DaysOfWeek
{
    private static readonly ImmutableArray<string> Names = ["sun", "mon", "tue", "wed", "thu", "fri", "sat"];

    private readonly byte _days;

    private DaysOfWeek(int days) => _days = (byte)days;

    /// <summary>No day; also the default.</summary>
    public static DaysOfWeek NoDay => default;

    /// <summary>All seven days.</summary>
    public static DaysOfWeek Every { get; } = new(127);

    /// <summary>How many days are in the set.</summary>
    public int Count => System.Numerics.BitOperations.PopCount(_days);

    /// <summary>Whether a day is in the set.</summary>
    public bool Contains(DayOfWeek day) => (_days & (1 << (int)day)) != 0;

    /// <summary>The set with a day added.</summary>
    public DaysOfWeek With(DayOfWeek day) => new(_days | (1 << (int)day));

    /// <summary>The set with a day taken out.</summary>
    public DaysOfWeek Without(DayOfWeek day) => new(_days & ~(1 << (int)day));

    /// <summary>The days in both sets.</summary>
    public DaysOfWeek And(DaysOfWeek other) => new(_days & other._days);

    /// <summary>
    /// The usual spread of a number of days over a week: 1 mon, 2 mon thu, 3 mon wed fri, 4 mon tue thu fri, 5 mon to fri, 6 mon to sat, 7 every day.
    /// Common practice, no source.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not 0 to 7.</exception>
    public static DaysOfWeek Spread(int days) => days switch
    {
        0 => NoDay,
        1 => Of(DayOfWeek.Monday),
        2 => Of(DayOfWeek.Monday, DayOfWeek.Thursday),
        3 => Of(DayOfWeek.Monday, DayOfWeek.Wednesday, DayOfWeek.Friday),
        4 => Of(DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Thursday, DayOfWeek.Friday),
        5 => Every.Without(DayOfWeek.Saturday).Without(DayOfWeek.Sunday),
        6 => Every.Without(DayOfWeek.Sunday),
        7 => Every,
        _ => throw new ArgumentOutOfRangeException(nameof(days), days, "A week has 0 to 7 days."),
    };

    /// <summary>A set of the days given.</summary>
    public static DaysOfWeek Of(params ReadOnlySpan<DayOfWeek> days)
    {
        DaysOfWeek set = default;
        foreach (DayOfWeek day in days)
        {
            set = set.With(day);
        }

        return set;
    }

    /// <summary>The set from its text form ("daily", "none", "mon wed fri", "mon,wed,fri"); null when it is not one.</summary>
    public static DaysOfWeek? Parse(string text)
    {
        string[] words = text.ToLowerInvariant().Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);
        if (words is ["daily"])
        {
            return Every;
        }

        if (words is ["none"])
        {
            return NoDay;
        }

        DaysOfWeek set = default;
        foreach (string word in words)
        {
            int day = Names.IndexOf(word);
            if (day < 0)
            {
                return null;
            }

            set = set.With((DayOfWeek)day);
        }

        return words.Length == 0 ? null : set;
    }

    /// <summary>"daily", "none", or the days from Monday on: "mon wed fri".</summary>
    public override string ToString()
    {
        DaysOfWeek self = this;
        return Count switch
        {
            0 => "none",
            7 => "daily",
            _ => string.Join(' ', Enumerable.Range(1, 7).Select(n => n % 7).Where(n => self.Contains((DayOfWeek)n)).Select(n => Names[n])),
        };
    }
}
