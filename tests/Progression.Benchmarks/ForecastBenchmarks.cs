using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Progression.Core.Forecasts;
using Progression.Core.Library;
using Progression.Core.People;
using Progression.Core.Statistics;

namespace Progression.Benchmarks;

/// <summary>Forecasts of a case of 26 weeks with 20 assessments.</summary>
[MemoryDiagnoser]
public class ForecastBenchmarks
{
    private const int Visits = 20;

    private readonly double _point = 0.4321;

    private readonly Case _patient = SampleCase.AtFirst with
    {
        PreOp = Visit(-7, 1),
        Assessments = [.. Enumerable.Range(1, Visits).Select(visit => Visit(9 * visit, visit / (double)Visits))],
    };

    private DateOnly Last => _patient.Assessments[^1].Date;

    /// <summary>What a reassessment waits for: all measures, with crossing weeks of their milestones.</summary>
    [Benchmark]
    public ImmutableSortedDictionary<string, ForecastAnswer> AllMeasures() => Forecasting.All(_patient, SampleCase.Library, Last);

    /// <summary>What a key of a what-if waits for.</summary>
    [Benchmark]
    public ForecastAnswer Flexion() => Forecasting.Of(_patient, SampleCase.Library, MeasureIds.FlexionActive, Last);

    /// <summary>The one with two series.</summary>
    [Benchmark]
    public ForecastAnswer Lag() => Forecasting.Of(_patient, SampleCase.Library, MeasureIds.Lag, Last);

    /// <summary>Flexion with most of the way ahead: the courses of week 3.</summary>
    [Benchmark]
    public ForecastAnswer FlexionInWeekThree() => Forecasting.Of(_patient, SampleCase.Library, MeasureIds.FlexionActive, _patient.Operation.Date.AddDays(21));

    /// <summary>One value of the distribution function.</summary>
    [Benchmark]
    public double Probability() => NormalDistribution.Probability(_point);

    private static Assessment Visit(int day, double share)
    {
        (string Measure, double Value)[] values =
        [
            (MeasureIds.FlexionActive, 70 + (45 * Math.Sqrt(share))), (MeasureIds.FlexionPassive, 78 + (42 * Math.Sqrt(share))),
            (MeasureIds.ExtensionActive, 16 - (13 * share)), (MeasureIds.ExtensionPassive, 8 - (7 * share)),
            (MeasureIds.QuadricepsTorque, 20 + (70 * share)), (MeasureIds.OtherTorque, 95 + (5 * share)),
            ("timed_up_and_go", 22 - (12 * share)), ("six_minute_walk", 220 + (260 * share)), ("chair_stands", 4 + (9 * share)), ("gait_speed", 0.6 + (0.6 * share)),
        ];
        return new Assessment(
            SampleCase.AtFirst.Operation.Date.AddDays(day),
            values.ToImmutableSortedDictionary(one => one.Measure, one => new Reading(one.Measure, one.Value), StringComparer.Ordinal),
            ImmutableSortedDictionary<string, Answer>.Empty);
    }
}
