using System.Globalization;
using Progression.Core.Entry;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Records.Cases;

/// <summary>How a set is written: "10", "10 @ 5 kg", and "done" in the place of the repetitions where they were not counted.</summary>
public static class SetText
{
    private const string Uncounted = "done";
    private const int MostRepetitions = 500;

    // Heavier than anybody loads a knee; catches slips. Common practice, no source.
    private static readonly QuantityForm<Mass> Load = QuantityText.Mass.Within(0, 300);

    /// <summary>What is accepted.</summary>
    public static string Allowed { get; } =
        string.Create(CultureInfo.InvariantCulture, $"repetitions from 0 to {MostRepetitions}, or \"{Uncounted}\", alone or with \"@\" and a load ({Load.Allowed})");

    /// <summary>Reads a set.</summary>
    public static Entered<SetDone> Read(string field, string text)
    {
        string[] parts = text.Split('@', 2, StringSplitOptions.TrimEntries);
        Entered<WholeNumber> repetitions = WholeNumberText.Read(field, parts[0], 0, MostRepetitions);
        Mass? load = parts.Length > 1 ? Load.Read(field, parts[1]).Value : null;
        bool good = (repetitions.Value is not null || parts[0] == Uncounted) && (load is not null || parts.Length == 1);
        return good
            ? Entered<SetDone>.Good(new SetDone(repetitions.Value?.Count, load))
            : Entered<SetDone>.Bad(new Problem(field, "This is not a set as it is written here.", Allowed, Found.Of(text)));
    }

    /// <summary>Writes a set so that <see cref="Read"/> gives it back.</summary>
    public static string Write(SetDone set) =>
        (set.Repetitions?.ToString(CultureInfo.InvariantCulture) ?? Uncounted) + (set.Load is { } load ? $" @ {MeasureText.Amount(load.Kilograms)} kg" : "");
}
