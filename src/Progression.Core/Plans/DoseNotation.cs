using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.Quantities;

namespace Progression.Core.Plans;

/// <summary>
/// The short text of an exercise dose and back: "3x10 hold 5 s load 2 kg 2/day mon wed fri", "15 min 2/day".
/// Sets by repetitions, or minutes; then hold, load ("2 kg", "60 %", "effort 13"), times a day and days, each where it differs from none, once and daily.
/// </summary>
internal static class DoseNotation
{
    internal const string Form = "3x10 or 15 min, then any of: hold 5 s, load 2 kg (or 60 % or effort 13), 2/day, days (daily, mon wed fri, 5d)";

    internal static string Text(ExerciseDose dose)
    {
        List<string> parts = [dose.Bout is null ? $"{dose.Sets}x{dose.Repetitions}" : $"{Number.Text(dose.Bout.Seconds / 60)} min"];
        if (dose.Hold is not null)
        {
            parts.Add($"hold {dose.Hold}");
        }

        if (dose.Load is not null)
        {
            parts.Add($"load {LoadText(dose.Load)}");
        }

        if (dose.TimesPerDay > 1)
        {
            parts.Add($"{dose.TimesPerDay}/day");
        }

        if (dose.Days != DaysOfWeek.Every)
        {
            parts.Add(dose.Days.ToString());
        }

        return string.Join(' ', parts);
    }

    /// <summary>The dose in the words; null with a sentence saying what is wrong.</summary>
    internal static (ExerciseDose? Dose, string? Wrong) Read(ReadOnlySpan<string> words)
    {
        if (words.Length == 0)
        {
            return (null, "The dose is missing.");
        }

        int? timesPerDay = null;
        (string Word, int Used) size = Join(words, "min");
        int at = size.Used;
        Duration? hold = null;
        ExerciseLoad? load = null;
        string days = "";
        while (at < words.Length)
        {
            (bool good, int used) = words[at] switch
            {
                "hold" => ReadHold(words[at..], out hold),
                "load" => ReadLoad(words[at..], out load),
                string word when word.EndsWith("/day", StringComparison.Ordinal) => ReadTimes(word, out timesPerDay),
                string word when word.EndsWith('d') && word.Length == 2 && word[0] is >= '0' and <= '7' =>
                    Keep(ref days, DaysOfWeek.Spread(word[0] - '0').ToString()),
                string word => Keep(ref days, word),
            };
            if (!good)
            {
                return (null, $"\"{Found.Of(string.Join(' ', words[at..].ToArray()))}\" is not understood.");
            }

            at += used;
        }

        return Make(size.Word, timesPerDay ?? 1, hold, load, days);
    }

    private static (ExerciseDose? Dose, string? Wrong) Make(string size, int times, Duration? hold, ExerciseLoad? load, string days)
    {
        DaysOfWeek? set = days.Length == 0 ? DaysOfWeek.Every : DaysOfWeek.Parse(days);
        if (set is null)
        {
            return (null, $"\"{Found.Of(days)}\" is not understood.");
        }

        ExerciseDose? dose = InMinutes(size, times) ?? InRepetitions(size, times);
        return dose is null
            ? (null, $"\"{Found.Of(size)}\" is not a dose: sets 1 to {ExerciseDose.MostSets}, repetitions 1 to {ExerciseDose.MostRepetitions}, or 1 to {ExerciseDose.MostBoutSeconds / 60} min.")
            : (dose with { Hold = hold, Load = load, Days = set.Value }, null);
    }

    private static ExerciseDose? InMinutes(string size, int times) =>
        size.EndsWith("min", StringComparison.Ordinal) && Decimal(size[..^3]) is double minutes && minutes > 0 && minutes * 60 <= ExerciseDose.MostBoutSeconds
            ? ExerciseDose.InTime(Duration.FromSeconds(minutes * 60), times)
            : null;

    private static ExerciseDose? InRepetitions(string size, int times)
    {
        string[] parts = size.Split('x');
        return parts.Length == 2 && Whole(parts[0], ExerciseDose.MostSets) is int sets && Whole(parts[1], ExerciseDose.MostRepetitions) is int repetitions
            ? ExerciseDose.InRepetitions(sets, repetitions, times)
            : null;
    }

    private static (bool, int) ReadHold(ReadOnlySpan<string> words, out Duration? hold)
    {
        (string word, int used) = words.Length > 1 ? Join(words[1..], "s") : ("", 0);
        hold = word.EndsWith('s') && Decimal(word[..^1]) is double seconds && seconds is > 0 and <= 600 ? Duration.FromSeconds(seconds) : null;
        return (hold is not null, used + 1);
    }

    private static (bool, int) ReadLoad(ReadOnlySpan<string> words, out ExerciseLoad? load)
    {
        load = null;
        if (words.Length > 2 && words[1] == "effort" && Whole(words[2], 20) is int rating && rating >= 6)
        {
            load = ExerciseLoad.AtEffort(rating);
            return (true, 3);
        }

        (string word, int used) = words.Length > 1 ? Join(words[1..], "kg", "%") : ("", 0);
        if (word.EndsWith("kg", StringComparison.Ordinal) && Decimal(word[..^2]) is double kilograms && kilograms is > 0 and <= 300)
        {
            load = ExerciseLoad.Of(Mass.FromKilograms(kilograms));
        }
        else if (word.EndsWith('%') && Decimal(word[..^1]) is double percent && percent is > 0 and <= 100)
        {
            load = ExerciseLoad.Of(Percentage.FromPercent(percent));
        }

        return (load is not null, used + 1);
    }

    private static (bool, int) ReadTimes(string word, out int? times)
    {
        times = Whole(word[..^4], ExerciseDose.MostTimesPerDay);
        return (times is not null, 1);
    }

    private static (bool, int) Keep(ref string days, string word)
    {
        days = days.Length == 0 ? word : $"{days} {word}";
        return (true, 1);
    }

    /// <summary>A word with its unit, whether the person left a space between them or not.</summary>
    private static (string Word, int Used) Join(ReadOnlySpan<string> words, params ReadOnlySpan<string> units) =>
        words.Length > 1 && units.Contains(words[1]) ? (words[0] + words[1], 2) : (words[0], 1);

    internal static int? Whole(string text, int most) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= 1 && value <= most ? value : null;

    internal static double? Decimal(string text) =>
        text.Length is > 0 and <= 12 && double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value) ? value : null;

    private static string LoadText(ExerciseLoad load) => load.OfMaximum is null ? load.ToString() : load.OfMaximum.ToString();
}
