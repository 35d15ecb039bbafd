using Progression.Benchmarks;
using Progression.Core.Library;

namespace Progression.Core.Tests.Rules;

/// <summary>
/// False-advance rates by simulation against the figures of the project's reference on measures, part 5.3, and against the normal distribution for the
/// ladder's own lag rule. Fixed seed; a rate may differ by four of its own standard errors.
/// </summary>
public sealed class FalseAdvanceTests
{
    private const int Seed = 20261125;

    private readonly LadderSimulation _simulation = new(Seed, 20_000);

    [Theory] // Example 18: criterion 90, truth 86, error 4.
    [InlineData(0, 0.1587)]
    [InlineData(2, 0.0668)]
    [InlineData(5.1262, 0.0113)]
    [InlineData(6.5794, 0.0041)]
    public void One_reading_with_a_guard_band(double guard, double expected) => Near(expected, _simulation.Once(-4, guard, 4));

    [Fact] // Example 19.
    public void Two_visits_the_mean_of_two_and_any_of_four()
    {
        Near(0.0252, _simulation.Every(-4, 4, 2));
        Near(0.0786, _simulation.Mean(-4, 4, 2));
        Near(0.4989, _simulation.Any(-4, 4, 4));
    }

    [Theory] // Part 5.3, truth at the limit.
    [InlineData(0, 0.25)]
    [InlineData(2, 0.0952)]
    [InlineData(4, 0.0252)]
    [InlineData(5.13, 0.00997)]
    public void Forward_and_back_by_chance(double guard, double expected) => Near(expected, _simulation.ForwardAndBack(guard, 4));

    [Theory] // Part 5.3: truths 88 (12), criterion 90, error 4.
    [InlineData(0, 0.437, 0.120, 0.887)]
    [InlineData(5.1262, 0.287, 0.022, 0.646)]
    [InlineData(6.5794, 0.249, 0.011, 0.567)]
    public void A_full_guard_keeps_back_many_of_the_ready(double guard, double forward, double falsely, double ready)
    {
        (double Forward, double Falsely, double ReadyForward) found = new LadderSimulation(Seed, 200_000).Population(-2, 12, guard, 4);

        Assert.Equal(forward, found.Forward, 0.005);
        Assert.Equal(falsely, found.Falsely, 0.005);
        Assert.Equal(ready, found.ReadyForward, 0.008);
    }

    [Theory] // Both readings at most 5 deg, error root(18) = 4.243 deg: the square of the normal probability, computed apart.
    [InlineData(5, 0.25)]
    [InlineData(7, 0.1016)]
    [InlineData(9, 0.0299)]
    [InlineData(11, 0.0062)]
    public void The_ladders_rule_that_confirms_a_closed_lag_twice(double lag, double expected) =>
        Near(expected, _simulation.LagClosed(Knee.Well.Case, Knee.Library, lag, visits: 2));

    [Theory] // A reading from 0 to 5 - 1.28 x 3 = 1.16 deg, error 3 deg when half of it is shared; computed apart.
    [InlineData(5, 0.0525)]
    [InlineData(9, 0.0031)]
    public void The_ladders_rule_that_takes_one_reading_under_the_guard(double lag, double expected) =>
        Near(expected, _simulation.LagClosed(Knee.Well.Case, Knee.LibraryWith(LimitIds.LagErrorCorrelation, 0.5), lag, visits: 1));

    [Fact]
    public void With_the_shipped_errors_one_visit_never_closes_a_lag() =>
        Assert.Equal(0, _simulation.LagClosed(Knee.Well.Case, Knee.Library, 0, visits: 1).Share);

    private static void Near(double expected, Rate found) => Assert.Equal(expected, found.Share, (4 * found.StandardError) + 0.00006);
}
