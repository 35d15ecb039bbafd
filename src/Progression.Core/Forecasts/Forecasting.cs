using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Plans;
using Progression.Core.Quantities;
using Progression.Core.Rules;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>Makes forecasts from a case. Withheld while a red flag is open.</summary>
public static class Forecasting
{
    private const string Withheld = "A red flag is open: forecasts are withheld until a clinician has closed it with a note.";

    /// <summary>The forecast of a measure from the assessments up to a day, or why there is none.</summary>
    public static ForecastAnswer Of(Case patient, ClinicalLibrary library, string measure, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ForecastReadings readings = ForecastReadings.Of(patient, asOf);
        return RedFlags.AnyOpen(patient, library, asOf) ? new ForecastAnswer(null, Withheld) : Of(readings, library, measure, asOf);
    }

    /// <summary>The forecasts of every measure that has a reading, and of those with a milestone lane.</summary>
    public static ImmutableSortedDictionary<string, ForecastAnswer> All(Case patient, ClinicalLibrary library, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ForecastReadings readings = ForecastReadings.Of(patient, asOf);
        bool withheld = RedFlags.AnyOpen(patient, library, asOf);
        return Measures(readings, library).ToImmutableSortedDictionary(
            id => id, id => withheld ? new ForecastAnswer(null, Withheld) : Of(readings, library, id, asOf), StringComparer.Ordinal);
    }

    /// <summary>
    /// The probability, 0 to 1, that the true value of a measure is in a week at least as good as a value in its unit; null when there is no forecast.
    /// </summary>
    public static double? ChanceAtLeast(Case patient, ClinicalLibrary library, string measure, double value, double week, DateOnly asOf)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ForecastReadings readings = ForecastReadings.Of(patient, asOf);
        return !RedFlags.AnyOpen(patient, library, asOf) && ForecastStart.Of(readings, library, measure).Start is { } start
            ? MilestoneReckoning.Chance(RecoveryOutlook.Of(start.Model).At(week), start.Model.ToScale(value), library.Measures[measure])
            : null;
    }

    /// <summary>What the forecasts of a day start from, by measure; empty when they are withheld.</summary>
    internal static IEnumerable<(string Measure, ForecastStart Start)> Starts(Case patient, ClinicalLibrary library, DateOnly asOf)
    {
        ForecastReadings readings = ForecastReadings.Of(patient, asOf);
        return RedFlags.AnyOpen(patient, library, asOf) ? [] :
            from id in Measures(readings, library)
            let start = ForecastStart.Of(readings, library, id).Start
            where start is not null
            select (id, start);
    }

    /// <summary>Every measure that has a reading, and those with a milestone lane.</summary>
    private static IEnumerable<string> Measures(ForecastReadings readings, ClinicalLibrary library) => library.Measures.Keys
        .Where(id => readings.States.Any(state => ForecastReadings.Value(state, id) is not null))
        .Union(Lanes.For(withStim: true).Select(lane => lane.Measure).OfType<string>());

    private static ForecastAnswer Of(ForecastReadings readings, ClinicalLibrary library, string id, DateOnly asOf)
    {
        (ForecastStart? start, string? whyNot) = ForecastStart.Of(readings, library, id);
        if (start is null)
        {
            return new ForecastAnswer(null, whyNot);
        }

        Measure measure = library.Measures[id];
        ImmutableArray<(KneeState State, double Value)> own = readings.Of(measure);
        RecoveryOutlook outlook = RecoveryOutlook.Of(start.Model);
        DateOnly day = own.IsEmpty ? asOf : own[^1].State.Date;
        return new ForecastAnswer(new Forecast
        {
            Measure = measure,
            AsOf = day,
            Basis = start.Basis,
            BasisWords = Words(start, measure, own.Length),
            Readings = own.Length,
            ErrorUsed = start.Model.Error,
            Points = ForecastGrid.Points(outlook, start, measure),
            Measured = [.. own.Select(one => (readings.WeekOf(one.State.Date), one.Value))],
            Milestones = [],
            MilestonesLater = new(() => MilestoneReckoning.Of(outlook, start.Model, library, (measure, readings.WeekOf(asOf), own.IsEmpty ? null : own[^1].Value))),
            SurpriseLater = new(() => SurpriseOf(readings, library, measure, own)),
            Source = start.Source,
        }, null);
    }

    private static string Words(ForecastStart start, Measure measure, int readings)
    {
        string error = measure.Scale == ErrorScale.Logarithmic
            ? $"{Number.Text(100 * start.Model.Error, 0)} %"
            : $"{Number.Text(start.Model.Error, 1)} {(measure.Unit == "1" ? "" : measure.Unit)}".TrimEnd();
        return readings == 0 ? $"population, not this patient: {start.Words}" : $"{start.Words}; {readings} {(readings == 1 ? "reading" : "readings")}, error {error}";
    }

    private static Surprise? SurpriseOf(ForecastReadings readings, ClinicalLibrary library, Measure measure, ImmutableArray<(KneeState State, double Value)> own)
    {
        if (own.IsEmpty || ForecastStart.Of(readings.WithoutLast(measure.Id), library, measure.Id).Start is not { } before)
        {
            return null;
        }

        NormalMixture expected = RecoveryOutlook.Of(before.Model).At(readings.WeekOf(own[^1].State.Date)).WithError(before.Model.Error);
        double z = (before.Model.ToScale(own[^1].Value) - expected.Mean) / expected.StandardDeviation;
        return Surprise.Of(z, library.Limit(LimitIds.ForecastSurprise).Value);
    }
}
