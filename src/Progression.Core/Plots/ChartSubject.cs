using System.Collections.Immutable;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Plots;

/// <summary>One measure as it is charted: what was measured since the operation, what is expected, what is to be reached.</summary>
public sealed record ChartSubject
{
    private const int DaysPerWeek = 7;

    /// <summary>The measure.</summary>
    public required Measure Measure { get; init; }

    /// <summary>What was measured since the operation, oldest first.</summary>
    public required ImmutableArray<ChartDot> Dots { get; init; }

    /// <summary>The milestones of the measure, by week.</summary>
    public required ImmutableArray<Milestone> Goals { get; init; }

    /// <summary>The forecast; null when there is none.</summary>
    public Forecast? Forecast { get; init; }

    /// <summary>Why there is no forecast; null when there is one.</summary>
    public string? WhyNot { get; init; }

    /// <summary>The measures of a case that have something to chart, in the order given.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="forecasts">The forecasts by measure.</param>
    /// <param name="measures">The ids of the measures that come first; forecasts of others follow.</param>
    public static ImmutableArray<ChartSubject> All(
        Case patient, ClinicalLibrary library, IReadOnlyDictionary<string, ForecastAnswer> forecasts, IEnumerable<string> measures)
    {
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(forecasts);
        IEnumerable<string> ids = measures.Concat(forecasts.Keys.Order(StringComparer.Ordinal)).Distinct().Where(library.Measures.ContainsKey);
        return
        [
            .. ids.Select(id => Of(patient, library, library.Measures[id], forecasts.GetValueOrDefault(id)))
                .Where(subject => !subject.Dots.IsEmpty || subject.Forecast is not null),
        ];
    }

    /// <summary>One measure of a case, whether there is something to chart or not.</summary>
    /// <param name="patient">The case.</param>
    /// <param name="library">The clinical library.</param>
    /// <param name="measure">The measure.</param>
    /// <param name="answer">Its forecast; null when none was asked for.</param>
    public static ChartSubject Of(Case patient, ClinicalLibrary library, Measure measure, ForecastAnswer? answer)
    {
        ArgumentNullException.ThrowIfNull(patient);
        ArgumentNullException.ThrowIfNull(library);
        ArgumentNullException.ThrowIfNull(measure);
        double? error = measure.Scale == ErrorScale.Ordinal ? null
            : answer?.Forecast?.ErrorUsed ?? (measure.Id == MeasureIds.Lag ? MeasurementError.OfLag(library) : measure.StandardError);
        return new()
        {
            Measure = measure,
            Dots =
            [
                .. from visit in patient.Assessments
                   let value = KneeState.At(visit, patient).OwnValue(measure.Id)
                   where value is not null
                   select ChartDot.Of(visit.Date, Weeks(patient, visit.Date), value.Value, error, measure.Scale),
            ],
            Goals = [.. library.Milestones.Where(goal => goal.Measure == measure.Id && goal.Target is not null).OrderBy(goal => goal.Week)],
            Forecast = answer?.Forecast,
            WhyNot = answer is null ? "Nothing is forecast for this measure." : answer.WhyNot,
        };
    }

    /// <summary>Weeks from the operation to a day, parts included.</summary>
    public static double Weeks(Case patient, DateOnly day) => PostOpWeek.DayOf(patient.Operation.Date, day) / (double)DaysPerWeek;
}
