using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Statistics;

namespace Progression.Core.Forecasts;

/// <summary>The forecasts of a case as they are kept, oldest first.</summary>
public static class ForecastLedger
{
    private const double Tail = 0.1;

    /// <summary>
    /// The ledger after an assessment: forecasts that wait are scored by its readings, and the new ones are added. Doing it again for the same day, after
    /// a correction say, takes the earlier doing back first.
    /// </summary>
    /// <param name="kept">The ledger before.</param>
    /// <param name="patient">The case, which holds the assessment.</param>
    /// <param name="library">The library from which the new forecasts start.</param>
    /// <param name="assessed">The day of the assessment.</param>
    public static ImmutableArray<KeptForecast> After(ImmutableArray<KeptForecast> kept, Case patient, ClinicalLibrary library, DateOnly assessed)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        KneeState? state = ForecastReadings.Of(patient, assessed).States.LastOrDefault(one => one.Date == assessed);
        IEnumerable<KeptForecast> earlier = Without(kept, assessed)
            .Select(one => Scored(one, state, patient, assessed));
        return [.. earlier, .. New(patient, library, assessed)];
    }

    /// <summary>The ledger as if there had been no assessment on a day: what was made on it goes, what was scored by it waits again.</summary>
    public static ImmutableArray<KeptForecast> Without(ImmutableArray<KeptForecast> kept, DateOnly day) =>
        [.. kept.Where(one => one.MadeOn != day).Select(one => one.Score?.On == day ? one with { Score = null } : one)];

    private static KeptForecast Scored(KeptForecast open, KneeState? state, Case patient, DateOnly on)
    {
        if (open.Score is not null || open.MadeOn > on || state is null || ForecastReadings.Value(state, open.Measure) is not double value
            || (open.Model.Scale == ErrorScale.Logarithmic && value <= 0))
        {
            return open;
        }

        double week = PostOpWeek.DayOf(patient.Operation.Date, on) / 7.0;
        NormalMixture seen = RecoveryOutlook.Of(open.Model).At(week).WithError(open.Model.Error);
        (double low, double high) = (open.Model.FromScale(seen.Quantile(Tail)), open.Model.FromScale(seen.Quantile(1 - Tail)));
        double z = (open.Model.ToScale(value) - seen.Mean) / seen.StandardDeviation;
        return open with { Score = new ForecastScore(on, value, low, high, value >= low && value <= high, z, Brier(open, seen, value)) };
    }

    private static double? Brier(KeptForecast kept, NormalMixture seen, double value)
    {
        if (kept.Target is not { } target)
        {
            return null;
        }

        bool higher = target.Better == Direction.HigherIsBetter;
        double limit = kept.Model.ToScale(target.Value);
        double chance = higher ? seen.AtLeast(limit) : seen.AtMost(limit);
        bool met = higher ? value >= target.Value : value <= target.Value;
        return Math.Pow(chance - (met ? 1 : 0), 2);
    }

    private static IEnumerable<KeptForecast> New(Case patient, ClinicalLibrary library, DateOnly assessed) =>
        from made in Forecasting.Starts(patient, library, assessed)
        select new KeptForecast
        {
            MadeOn = assessed,
            Measure = made.Measure,
            Basis = made.Start.Basis,
            LibraryVersion = library.Version,
            Model = made.Start.Model,
            Target = Ahead(library, library.Measures[made.Measure], PostOpWeek.DayOf(patient.Operation.Date, assessed) / 7.0),
        };

    private static KeptTarget? Ahead(ClinicalLibrary library, Measure measure, double week) =>
        library.Milestones.FirstOrDefault(one => one.Measure == measure.Id && one.Week > week && MilestoneReckoning.CanBeReckoned(one, measure)) is { } next
            ? new KeptTarget(next.Id, next.Week, next.Target!.Value, measure.Better)
            : null;
}
