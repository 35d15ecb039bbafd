using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class SeededNumbersTests
{
    [Fact] // First outputs of SplitMix64 for seed 1234567, as often printed with the algorithm; from memory.
    public void The_bits_are_those_of_the_published_generator()
    {
        SeededNumbers numbers = new(1234567);

        Assert.Equal([6457827717110365317, 3203168211198807973, 9817491932198370423], Enumerable.Range(0, 3).Select(_ => numbers.NextBits()));
    }

    [Fact]
    public void Normal_draws_have_mean_zero_and_variance_one()
    {
        SeededNumbers numbers = new(7);
        double[] drawn = [.. Enumerable.Range(0, 20_000).Select(_ => numbers.NextNormal())];

        Assert.InRange(drawn.Average(), -0.03, 0.03); // four standard errors: 0.028
        Assert.InRange(drawn.Average(x => x * x), 0.96, 1.04); // four standard errors: 0.04
        Assert.InRange(drawn.Count(x => Math.Abs(x) > 1.959964) / 20_000.0, 0.044, 0.056); // 5 %
    }
}
