using System.Collections.Immutable;
using Progression.Core.Library;

namespace Progression.Core.Forecasts;

/// <summary>What a forecast starts from: the model with its readings, and what is to be said about it.</summary>
internal sealed record ForecastStart
{
    internal required ForecastModel Model { get; init; }

    internal required ForecastBasis Basis { get; init; }

    /// <summary>The starting assumption in words.</summary>
    internal required string Words { get; init; }

    /// <summary>The week up to which the data behind it reach.</summary>
    internal required double HorizonWeek { get; init; }

    internal required Source Source { get; init; }

    /// <summary>The start for a measure, or why there is none.</summary>
    internal static (ForecastStart? Start, string? WhyNot) Of(ForecastReadings readings, ClinicalLibrary library, string id)
    {
        if (!library.Measures.TryGetValue(id, out Measure? measure))
        {
            return (null, $"There is no measure {id} in the library.");
        }

        return id == MeasureIds.Lag ? OfLag(readings, library) : OfOne(readings, library, measure);
    }

    private static (ForecastStart?, string?) OfOne(ForecastReadings readings, ClinicalLibrary library, Measure measure)
    {
        RecoveryPrior? prior = library.PriorOf(measure.Id);
        if ((prior?.Error ?? measure.StandardError) is not double error || measure.Scale == ErrorScale.Ordinal)
        {
            return (null, $"{measure.Title}: no error of measurement is known, so nothing can be forecast.");
        }

        ImmutableArray<SeenValue> seen = [.. readings.Of(measure).Select(one => new SeenValue(readings.WeekOf(one.State.Date), one.Value, error))];
        return prior is not null ? (Published(prior, measure, error, seen), null) : OwnReadings(library.OwnReadings, measure, error, seen);
    }

    private static ForecastStart Published(RecoveryPrior prior, Measure measure, double error, ImmutableArray<SeenValue> seen)
    {
        string standing = prior.Source.Standing == prior.SpreadStanding
            ? prior.Source.StandingWords
            : $"level {prior.Source.StandingWords}, spread {Source.Words(prior.SpreadStanding)}";
        return new ForecastStart
        {
            Model = new ForecastModel(measure.Scale, [new ForecastSeries(measure.Id, 1, prior.Curve, error, seen)], 0),
            Basis = prior.IsClinic ? ForecastBasis.Clinic : ForecastBasis.Population,
            Words = $"{(prior.IsClinic ? "clinic" : "population")} prior ({standing}){(prior.Variant is null ? "" : ", " + prior.Variant)}",
            HorizonWeek = prior.HorizonWeek,
            Source = prior.Source,
        };
    }

    private static (ForecastStart?, string?) OwnReadings(OwnReadingsStart? start, Measure measure, double error, ImmutableArray<SeenValue> seen)
    {
        if (start is null || seen.Length < start.LeastReadings)
        {
            string needed = start is null ? "" : $"; it takes {start.LeastReadings} readings of this person, there {(seen.Length == 1 ? "is 1" : $"are {seen.Length}")}";
            return (null, $"{measure.Title}: there is no published prior{needed}.");
        }

        bool logarithmic = measure.Scale == ErrorScale.Logarithmic;
        double level = logarithmic ? Math.Exp(seen.Average(one => Math.Log(one.Value))) : seen.Average(one => one.Value);
        return (new ForecastStart
        {
            Model = new ForecastModel(measure.Scale, [new ForecastSeries(measure.Id, 1, start.Around(level, error), error, seen)], 0),
            Basis = ForecastBasis.OwnReadings,
            Words = $"from this person's own {seen.Length} readings; no published prior",
            HorizonWeek = seen[^1].Week + start.HorizonWeeks,
            Source = start.Source,
        }, null);
    }

    /// <summary>The lag is what active extension lacks of passive; no course of the lag itself is published, so the two are forecast and taken from each other.</summary>
    private static (ForecastStart?, string?) OfLag(ForecastReadings readings, ClinicalLibrary library)
    {
        (ForecastStart? active, string? noActive) = OfOne(readings, library, library.Measures[MeasureIds.ExtensionActive]);
        (ForecastStart? passive, string? noPassive) = OfOne(readings, library, library.Measures[MeasureIds.ExtensionPassive]);
        if (active is null || passive is null)
        {
            return (null, $"The lag is forecast from active and passive extension together. {noActive ?? noPassive}");
        }

        ForecastStart weaker = active.Basis >= passive.Basis ? active : passive;
        ForecastSeries taken = passive.Model.Series[0] with { Sign = -1 };
        return (new ForecastStart
        {
            Model = new ForecastModel(ErrorScale.Linear, [active.Model.Series[0], taken], library.Limit(LimitIds.LagErrorCorrelation).Value),
            Basis = weaker.Basis,
            Words = $"active and passive extension together: active {active.Words}; passive {passive.Words}",
            HorizonWeek = Math.Min(active.HorizonWeek, passive.HorizonWeek),
            Source = weaker.Source,
        }, null);
    }
}
