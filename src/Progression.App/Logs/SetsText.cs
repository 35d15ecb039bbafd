using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Progression.Core.Entry;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.App.Logs;

/// <summary>
/// The sets of an exercise as typed: "3x10", "10 10 8 @ 5 kg", "10@4 10@5 8", "15 min". A set without a load has that of the set before; sets before
/// the first load have that one.
/// </summary>
public static partial class SetsText
{
    private const double MostKilograms = 300;
    private const int MostMinutes = ExerciseDose.MostBoutSeconds / 60;

    /// <summary>What is accepted, in words.</summary>
    public static string Allowed { get; } = $"sets as in 3x10, or 10 10 8 @ 5 kg, or 15 min; 1 to {ExerciseDose.MostSets} sets, 0 to {ExerciseDose.MostRepetitions} repetitions, "
        + $"0 to {MostKilograms} kg, 1 to {MostMinutes} min";

    /// <summary>A planned dose as it would be logged when done as planned; a load that is not a mass is left open.</summary>
    public static string Planned(ExerciseDose dose)
    {
        ArgumentNullException.ThrowIfNull(dose);
        return dose.Bout is { } bout ? $"{Number.Text(bout.Seconds / 60)} min" : $"{dose.Sets}x{dose.Repetitions}{(dose.Load?.Mass is { } mass ? $" @ {mass}" : "")}";
    }

    /// <summary>Reads what was done.</summary>
    /// <param name="exercise">The id of the exercise.</param>
    /// <param name="field">The field as the person knows it.</param>
    /// <param name="text">The text as typed.</param>
    public static Entered<ExerciseDone> Read(string exercise, string field, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (Minutes().Match(text) is { Success: true } time)
        {
            return Amount(time.Groups[1].Value) is double minutes and > 0 and <= MostMinutes
                ? Entered<ExerciseDone>.Good(new ExerciseDone(exercise, []) { Time = Duration.FromSeconds(minutes * 60) })
                : Bad(field, "The time is out of range.", text);
        }

        ImmutableArray<(int Repetitions, double? Load)> sets = [];
        if (UnclearLoad().IsMatch(text))
        {
            return Bad(field, "The comma can part decimals of a load or two sets; write a point, or kg behind the load.", text);
        }

        string pointed = CommaLoad().Replace(text, "$1.$2");
        foreach (string word in Loads().Replace(pointed.Replace(',', ' '), "@$1").Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (Set().Match(word) is not { Success: true } set || Sets(set) is not { } some)
            {
                return Bad(field, $"\"{Found.Of(word)}\" is not understood or out of range.", text);
            }

            sets = sets.AddRange(some);
        }

        return sets.Length is 0 or > ExerciseDose.MostSets
            ? Bad(field, sets.Length == 0 ? "There is no set." : "There are too many sets.", text)
            : Entered<ExerciseDone>.Good(new ExerciseDone(exercise, WithLoads(sets)));
    }

    private static ImmutableArray<SetDone> WithLoads(ImmutableArray<(int Repetitions, double? Load)> sets)
    {
        double? load = sets.Select(set => set.Load).FirstOrDefault(one => one is not null);
        ImmutableArray<SetDone>.Builder done = ImmutableArray.CreateBuilder<SetDone>();
        foreach ((int repetitions, double? own) in sets)
        {
            load = own ?? load;
            done.Add(new SetDone(repetitions, load is double kilograms ? Mass.FromKilograms(kilograms) : null));
        }

        return done.ToImmutable();
    }

    private static IEnumerable<(int, double?)>? Sets(Match set)
    {
        int? count = set.Groups[1].Length == 0 ? 1 : Whole(set.Groups[1].Value, ExerciseDose.MostSets);
        int? repetitions = Whole(set.Groups[2].Value, ExerciseDose.MostRepetitions);
        double? load = set.Groups[3].Length == 0 ? null : Amount(set.Groups[3].Value);
        return count is null or 0 || repetitions is null || load > MostKilograms || (load is null && set.Groups[3].Length > 0)
            ? null
            : Enumerable.Repeat((repetitions.Value, load), count.Value);
    }

    private static int? Whole(string digits, int most) => int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value <= most ? value : null;

    private static double? Amount(string digits) =>
        digits.Length <= 12 && double.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : null;

    private static Entered<ExerciseDone> Bad(string field, string wrong, string text) => Entered<ExerciseDone>.Bad(new Problem(field, wrong, Allowed, Found.Of(text)));

    [GeneratedRegex(@"^ *([0-9]+(?:\.[0-9]+)?) *(?:min|minutes?) *\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Minutes();

    [GeneratedRegex(@" *@ *([0-9]+(?:\.[0-9]+)?)(?: *kg\b)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Loads();

    [GeneratedRegex(@"(@ *[0-9]+),([0-9]{1,2})(?= *kg\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex CommaLoad();

    [GeneratedRegex(@"@ *[0-9]+,[0-9]{1,2}(?![0-9@x.]| *kg\b| *@)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex UnclearLoad();

    [GeneratedRegex(@"^(?:([0-9]{1,4})x)?([0-9]{1,4})(?:@([0-9]+(?:\.[0-9]+)?))?\z", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Set();
}
