using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;

namespace Progression.Core.Forecasts;

/// <summary>A person's readings as forecasts take them: since the operation, oldest first, with weeks counted in days.</summary>
/// <param name="Case">The case.</param>
/// <param name="States">The assessments up to the day asked for, oldest first.</param>
internal sealed record ForecastReadings(Case Case, ImmutableArray<KneeState> States)
{
    private const double DaysPerWeek = 7;

    internal static ForecastReadings Of(Case patient, DateOnly upTo) =>
        new(patient, [.. patient.Assessments.Where(one => one.Date <= upTo && one.Date >= patient.Operation.Date).Select(one => KneeState.At(one, patient))]);

    /// <summary>The same without the latest reading of a measure.</summary>
    internal ForecastReadings WithoutLast(string measure)
    {
        int last = States.Length - 1;
        while (last >= 0 && Value(States[last], measure) is null)
        {
            last--;
        }

        return this with { States = [.. States.Take(last)] };
    }

    /// <summary>The readings of a measure that its scale can hold.</summary>
    internal ImmutableArray<(KneeState State, double Value)> Of(Measure measure) =>
    [
        .. from state in States
           let value = Value(state, measure.Id)
           where value is not null && (measure.Scale != ErrorScale.Logarithmic || value > 0)
           select (state, value.Value),
    ];

    /// <summary>Weeks since the operation.</summary>
    internal double WeekOf(DateOnly day) => PostOpWeek.DayOf(Case.Operation.Date, day) / DaysPerWeek;

    /// <summary>The value at a visit; a passive reading never stands for an active one.</summary>
    internal static double? Value(KneeState state, string measure) =>
        measure == MeasureIds.FlexionActive ? state.Assessment.Value(measure) : state.Value(measure);
}
