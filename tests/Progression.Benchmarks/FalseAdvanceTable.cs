using Progression.Core.Library;
using Progression.Core.Measures;
using Progression.Core.Quantities;

namespace Progression.Benchmarks;

/// <summary>
/// The false-advance rates of guard bands and of confirming twice: formula beside simulation. Criterion 90 deg, truth 86, error 4 deg, as in the
/// project's reference on measures, part 5.3; then the ladder's own lag rule at the shipped errors.
/// </summary>
internal static class FalseAdvanceTable
{
    private const int Seed = 20261125;
    private const int Runs = 200_000;

    public static void Print(TextWriter to)
    {
        LadderSimulation simulation = new(Seed, Runs);
        to.WriteLine($"False advance, in percent; {Runs} runs, seed {Seed}");
        double once = GuardBand.Pass(-4, 0, 4);
        foreach (double guard in new[] { 0, 2, GuardBand.Width(0.10, 4), GuardBand.Width(0.05, 4) })
        {
            Row(to, $"one reading, guard {Number.Text(guard, 2)}", GuardBand.Pass(-4, guard, 4), simulation.Once(-4, guard, 4));
        }

        Row(to, "two visits, both over", GuardBand.PassEvery(once, 2), simulation.Every(-4, 4, 2));
        Row(to, "mean of two", GuardBand.PassOnMean(-4, 0, 4, 2), simulation.Mean(-4, 4, 2));
        Row(to, "mean of three", GuardBand.PassOnMean(-4, 0, 4, 3), simulation.Mean(-4, 4, 3));
        Row(to, "any of four looks", GuardBand.PassOnce(once, 4), simulation.Any(-4, 4, 4));
        foreach (double guard in new[] { 0, 2, 4, 5.13 })
        {
            Row(to, $"truth at the limit, forward and back, band {Number.Text(guard, 2)}", GuardBand.ForwardAndBack(guard, 4), simulation.ForwardAndBack(guard, 4));
        }

        foreach (double guard in new[] { 0, GuardBand.Width(0.10, 4), GuardBand.Width(0.05, 4) })
        {
            (double forward, double falsely, double ready) = simulation.Population(-2, 12, guard, 4);
            to.WriteLine($"truths 88 (12), guard {Number.Text(guard, 2),-30} forward {Percent(forward)}, of those falsely {Percent(falsely)}, of the ready {Percent(ready)}");
        }

        Lag(to, simulation);
    }

    private static void Lag(TextWriter to, LadderSimulation simulation)
    {
        ClinicalLibrary library = SampleCase.Library;
        ClinicalLibrary shared = library with { Limits = library.Limits.SetItem(LimitIds.LagErrorCorrelation, library.Limit(LimitIds.LagErrorCorrelation) with { Value = 0.5 }) };
        double limit = library.Limit(LimitIds.LagClosed).Value;
        foreach (double lag in new[] { 5.0, 7, 9, 11 })
        {
            double error = MeasurementError.OfLag(library)!.Value;
            Row(to, $"the ladder's rule, lag {Number.Text(lag)} deg, two visits", GuardBand.PassEvery(GuardBand.Pass(limit - lag, 0, error), 2), simulation.LagClosed(SampleCase.AtFirst, library, lag, 2));
            double once = MeasurementError.OfLag(shared)!.Value;
            double guard = library.Limit(LimitIds.LagGuardSems).Value * once;
            Row(to, $"the same, once by the guard, errors half shared", GuardBand.Pass(limit - lag, guard, once) - GuardBand.Pass(-lag, 0, once), simulation.LagClosed(SampleCase.AtFirst, shared, lag, 1));
        }
    }

    private static void Row(TextWriter to, string what, double formula, Rate simulated) =>
        to.WriteLine($"{what,-55} formula {Percent(formula),6}   simulated {Percent(simulated.Share),6} +- {Percent(simulated.StandardError)}");

    private static string Percent(double share) => Number.Text(100 * share, 2);
}
