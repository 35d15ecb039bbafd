using Progression.Core.Quantities;

namespace Progression.Core.Library;

/// <summary>
/// How much of an exercise on one of its days. Either repetitions or minutes, never both: walking is dosed in minutes, strength work in repetitions.
/// </summary>
public sealed record ExerciseDose
{
    private ExerciseDose()
    {
    }

    /// <summary>Sets each time; from 1. For an exercise dosed in minutes, 1.</summary>
    public int Sets { get; private init; } = 1;

    /// <summary>Repetitions in a set; null for an exercise dosed in minutes.</summary>
    public int? Repetitions { get; private init; }

    /// <summary>Length of one bout; null for an exercise dosed in repetitions.</summary>
    public Duration? Bout { get; private init; }

    /// <summary>Hold at the top of each repetition; null for none.</summary>
    public Duration? Hold { get; init; }

    /// <summary>Load; null for body weight or the limb alone.</summary>
    public ExerciseLoad? Load { get; init; }

    /// <summary>Times a day; from 1.</summary>
    public int TimesPerDay { get; private init; } = 1;

    /// <summary>The days of the week on which it is done.</summary>
    public DaysOfWeek Days { get; init; } = DaysOfWeek.Every;

    /// <summary>Repetitions on one of its days; zero for an exercise dosed in minutes.</summary>
    public int RepetitionsPerDay => Sets * (Repetitions ?? 0) * TimesPerDay;

    /// <summary>A dose in sets of repetitions.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Sets are not 1 to 20, repetitions not 1 to 200, or times a day not 1 to 12.</exception>
    public static ExerciseDose InRepetitions(int sets, int repetitions, int timesPerDay = 1)
    {
        CheckTimes(timesPerDay);
        return new ExerciseDose
        {
            Sets = Check(sets, MostSets, nameof(sets)),
            Repetitions = Check(repetitions, MostRepetitions, nameof(repetitions)),
            TimesPerDay = timesPerDay,
        };
    }

    /// <summary>A dose in time.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The bout is zero or over four hours, or times a day are not 1 to 12.</exception>
    public static ExerciseDose InTime(Duration bout, int timesPerDay = 1)
    {
        ArgumentOutOfRangeException.ThrowIfZero(bout.Seconds);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bout.Seconds, MostBoutSeconds);
        CheckTimes(timesPerDay);
        return new ExerciseDose { Bout = bout, TimesPerDay = timesPerDay };
    }

    /// <summary>Most sets at a time.</summary>
    public const int MostSets = 20;

    /// <summary>Most repetitions in a set.</summary>
    public const int MostRepetitions = 200;

    /// <summary>Most times a day.</summary>
    public const int MostTimesPerDay = 12;

    /// <summary>Longest bout, in seconds.</summary>
    public const int MostBoutSeconds = 4 * 3600;

    private static int Check(int value, int most, string name)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(value, 1, name);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(value, most, name);
        return value;
    }

    private static void CheckTimes(int timesPerDay) => Check(timesPerDay, MostTimesPerDay, nameof(timesPerDay));
}
