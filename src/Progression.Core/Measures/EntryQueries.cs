using System.Collections.Immutable;
using System.Globalization;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Quantities;

namespace Progression.Core.Measures;

/// <summary>What to ask back about a new assessment before it is kept.</summary>
public static class EntryQueries
{
    private const int FewestTrials = 3;
    private const int MostTrials = 50;

    /// <summary>Every question about an assessment, by itself and against the earlier ones of its case; then what is only remarked.</summary>
    /// <param name="patient">The case; assessments of the same day or later are not looked at.</param>
    /// <param name="now">The assessment to be kept.</param>
    /// <param name="library">The library with errors and limits.</param>
    public static ImmutableArray<EntryQuery> Of(Case patient, Assessment now, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(library);
        EarlierReadings earlier = new(patient, now);
        return
        [
            .. OfVisit(now, library), .. StrengthQueries.Of(earlier, library), .. Stairs(earlier, library), .. Circumstance(earlier, library), .. Missing(earlier, library),
        ];
    }

    /// <summary>The questions that an assessment raises by itself.</summary>
    public static ImmutableArray<EntryQuery> OfVisit(Assessment now, ClinicalLibrary library)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(library);
        ImmutableArray<EntryQuery> lag = [.. Lag(now, library)];
        return [.. lag, .. lag.IsEmpty ? TurnedRound(now, library) : [], .. now.Readings.Values.SelectMany(reading => Outliers(reading, library))];
    }

    // A leg cannot straighten further by itself than it can be straightened: a lag under zero by more than the error of one lag is most likely a sign
    // turned round. The readings can still be what was read.
    private static IEnumerable<EntryQuery> Lag(Assessment now, ClinicalLibrary library)
    {
        if (now.Value(MeasureIds.ExtensionActive) is not double active || now.Value(MeasureIds.ExtensionPassive) is not double passive
            || MeasurementError.OfLag(library) is not double error)
        {
            yield break;
        }

        double least = -MeasurementError.Z(library.Limit(LimitIds.ChangeLevel).Value) * error;
        if (active - passive < least)
        {
            yield return new EntryQuery(
                MeasureIds.ExtensionActive,
                "The active extension deficit is less than the passive one by more than the error of measurement; please check the signs (5 deg is 5 deg short of straight, -5 deg beyond it).",
                $"active minus passive deficit of at least {Number.Text(least, 1)} deg",
                $"{Number.Text(active)} minus {Number.Text(passive)} is {Number.Text(active - passive)} deg");
        }
    }

    private static IEnumerable<EntryQuery> TurnedRound(Assessment now, ClinicalLibrary library)
    {
        Limit beyond = library.Limit(LimitIds.BeyondStraight);
        return from id in new[] { MeasureIds.ExtensionActive, MeasureIds.ExtensionPassive }
               where now.Value(id) < -beyond.Value
               let found = now.Value(id)!.Value
               select new EntryQuery(
                   id,
                   $"This is {Number.Text(-found)} deg beyond straight; many charts write a deficit as a negative number. Please check the sign.",
                   $"{Number.Text(-found)} deg if the knee is short of straight; at most {beyond.Text} beyond straight (-{beyond.Text})",
                   $"{Number.Text(found)} deg");
    }

    // Two trials of one sitting differ less than two visits, so a trial further from the middle of its set than two visits can differ by chance is odd.
    // Common practice, no source; no trial is left out for it.
    private static IEnumerable<EntryQuery> Outliers(Reading reading, ClinicalLibrary library)
    {
        if (reading.Each.Length is < FewestTrials or > MostTrials || !library.Measures.TryGetValue(reading.Measure, out Measure? measure)
            || measure is not { StandardError: double error, Scale: not ErrorScale.Ordinal })
        {
            yield break;
        }

        bool ratios = measure.Scale == ErrorScale.Logarithmic;
        double middle = Median(reading.Each);
        double most = MeasurementError.DetectableChange(error, library.Limit(LimitIds.ChangeLevel).Value);
        (double low, double high) = ratios ? (middle * Math.Exp(-most), middle * Math.Exp(most)) : (middle - most, middle + most);
        foreach (double trial in reading.Each.Where(trial => trial < low || trial > high))
        {
            yield return new EntryQuery(
                reading.Measure,
                "One trial lies far from the others; please check it.",
                $"{Number.Text(low, 1)} to {MeasureText.Amount(measure, high, 1)}, about the middle trial of {MeasureText.Shown(measure, middle)}",
                MeasureText.Shown(measure, trial));
        }
    }

    private static IEnumerable<EntryQuery> Stairs(EarlierReadings earlier, ClinicalLibrary library) =>
        from measure in library.Measures.Values
        where measure.SameStairs && earlier.Now.Readings.ContainsKey(measure.Id)
        let last = earlier.Last(measure.Id)
        where last?.Readings[measure.Id].Steps is not null
        let then = last.Readings[measure.Id].Steps!.Value
        let now = earlier.Now.Readings[measure.Id].Steps
        where now != then
        select new EntryQuery(
            measure.Id,
            $"The stairs differ from those of {last.Date:yyyy-MM-dd}; the two times cannot be compared.",
            string.Create(CultureInfo.InvariantCulture, $"{then} steps, as last time"),
            now is int steps ? string.Create(CultureInfo.InvariantCulture, $"{steps} steps") : "number of steps not stated");

    private static IEnumerable<EntryQuery> Circumstance(EarlierReadings earlier, ClinicalLibrary library)
    {
        ImmutableArray<(Measure Measure, Circumstances Seen)> all =
        [
            .. from id in earlier.Now.Readings.Keys
               where library.Measures.ContainsKey(id)
               let last = earlier.Last(id)
               where last is not null
               let measure = library.Measures[id]
               orderby measure.Place
               select (measure, Circumstances.Of(earlier.At(last), earlier.At(earlier.Now), measure)),
        ];
        return new (string Field, Func<Circumstances, ImmutableArray<string>> Changed)[] { ("rater", seen => seen.Raters), ("device", seen => seen.Devices), ("position", seen => seen.Positions) }
            .SelectMany(kind => all
                .SelectMany(one => kind.Changed(one.Seen).Select(words => (one.Measure.Title, Words: words)))
                .GroupBy(one => one.Words, one => one.Title)
                .Select(same => new EntryQuery(
                    kind.Field,
                    $"Another {kind.Field} than last time makes it harder to tell change from error ({string.Join(", ", same)}).",
                    $"the same {kind.Field}",
                    same.Key)
                {
                    IsNote = true,
                }));
    }

    private static IEnumerable<EntryQuery> Missing(EarlierReadings earlier, ClinicalLibrary library)
    {
        if (earlier.Previous is not { } last)
        {
            yield break;
        }

        ImmutableArray<string> missing =
        [
            .. last.Readings.Keys.Except(earlier.Now.Readings.Keys).Where(library.Measures.ContainsKey)
                .Select(id => library.Measures[id]).OrderBy(measure => measure.Place).Select(measure => measure.Title),
        ];
        if (!missing.IsEmpty)
        {
            yield return new EntryQuery("readings", $"Measured on {last.Date:yyyy-MM-dd} and not now; what is missing stays not measured.", string.Join(", ", missing), "not measured") { IsNote = true };
        }
    }

    private static double Median(ImmutableArray<double> values)
    {
        ImmutableArray<double> sorted = values.Sort();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
