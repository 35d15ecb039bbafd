using System.Collections.Immutable;
using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.People;
using Progression.Core.Rules;

namespace Progression.Benchmarks;

/// <summary>A share of simulated runs with its own standard error.</summary>
internal readonly record struct Rate(double Share, double StandardError);

/// <summary>
/// Readings with error of knees whose truth is known: how often a criterion is passed that is not truly met. The lag rules are the program's own,
/// read on whole assessments. The same seed gives the same figures.
/// </summary>
internal sealed class LadderSimulation(int seed, int runs)
{
    private static readonly DateOnly Operated = new(2026, 3, 2);

    private readonly Random _random = new(seed);

    /// <summary>One reading against the limit with a guard band; the truth is this far over the limit.</summary>
    public Rate Once(double over, double guard, double error) => Of(() => Read(over, error) >= guard);

    /// <summary>Every one of several separate readings.</summary>
    public Rate Every(double over, double error, int readings) => Of(() => Many(over, error, readings).All(reading => reading >= 0));

    /// <summary>The mean of several readings.</summary>
    public Rate Mean(double over, double error, int readings) => Of(() => Many(over, error, readings).Average() >= 0);

    /// <summary>The first pass of several looks.</summary>
    public Rate Any(double over, double error, int looks) => Of(() => Many(over, error, looks).Any(reading => reading >= 0));

    /// <summary>Forward by a reading a band over the limit, and at the next visit back by one a band under it; the truth is at the limit.</summary>
    public Rate ForwardAndBack(double guard, double error) => Of(() => Read(0, error) >= guard && Read(0, error) <= -guard);

    /// <summary>Of knees whose truth varies: how many go forward, how many of those falsely, and how many of the ready ones do.</summary>
    public (double Forward, double Falsely, double ReadyForward) Population(double mean, double spread, double guard, double error)
    {
        (int forward, int falsely, int ready) = (0, 0, 0);
        for (int run = 0; run < runs; run++)
        {
            double over = mean + (spread * Gauss());
            bool passes = Read(over, error) >= guard;
            forward += passes ? 1 : 0;
            falsely += passes && over < 0 ? 1 : 0;
            ready += over >= 0 ? 1 : 0;
        }

        return ((double)forward / runs, (double)falsely / forward, (double)(forward - falsely) / ready);
    }

    /// <summary>How often the program's own rule calls a lag closed after weekly visits.</summary>
    /// <param name="patient">Any case; its assessments are replaced.</param>
    /// <param name="library">The library, whose errors the readings have.</param>
    /// <param name="lag">The true lag in degrees.</param>
    /// <param name="visits">Visits, a week apart; the rule is read at the last.</param>
    public Rate LagClosed(Case patient, ClinicalLibrary library, double lag, int visits) => Of(() =>
    {
        Case seen = patient with { Operation = patient.Operation with { Date = Operated }, Assessments = [.. Enumerable.Range(1, visits).Select(week => Visit(library, lag, week))] };
        ImmutableArray<KneeState> states = [.. seen.Assessments.Select(one => KneeState.At(one, seen))];
        Judged closed = LadderRules.StepDown.When[0](new LadderFacts(seen, library, states, Rung.Reduced, Operated));
        return closed.Words.StartsWith("extension lag is at most", StringComparison.Ordinal)
            ? closed.Truth == Truth.Holds
            : throw new InvalidOperationException($"This is not the rule on the lag: {closed.Words}");
    });

    private Assessment Visit(ClinicalLibrary library, double lag, int week)
    {
        const double Passive = 2;
        double correlation = library.Limit(LimitIds.LagErrorCorrelation).Value;
        (double shared, double own) = (Gauss(), Gauss());
        double Error(string measure) => library.Measures[measure].StandardError!.Value;
        double active = Passive + lag + (Error(MeasureIds.ExtensionActive) * shared);
        double passive = Passive + (Error(MeasureIds.ExtensionPassive) * ((correlation * shared) + (Math.Sqrt(1 - (correlation * correlation)) * own)));
        return new Assessment(
            Operated.AddDays(7 * week),
            new[] { new Reading(MeasureIds.ExtensionActive, active), new Reading(MeasureIds.ExtensionPassive, passive) }
                .ToImmutableSortedDictionary(reading => reading.Measure, reading => reading, StringComparer.Ordinal),
            ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal));
    }

    private Rate Of(Func<bool> passes)
    {
        double share = (double)Enumerable.Range(0, runs).Count(_ => passes()) / runs;
        return new Rate(share, Math.Sqrt(share * (1 - share) / runs));
    }

    private double[] Many(double over, double error, int readings) => [.. Enumerable.Range(0, readings).Select(_ => Read(over, error))];

    private double Read(double over, double error) => over + (error * Gauss());

    /// <summary>A draw from the standard normal distribution, by Box and Muller.</summary>
    private double Gauss() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
