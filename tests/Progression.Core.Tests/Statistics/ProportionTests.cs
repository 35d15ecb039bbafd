using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class ProportionTests
{
    [Theory] // R 4.2.2: prop.test(hits, trials, correct = FALSE)$conf.int; 81 of 263 is the worked example of Newcombe 1998, Stat Med 17:857 (0.2553 to 0.3662; from memory).
    [InlineData(0, 10, 0, 0.2775327999)]
    [InlineData(10, 10, 0.7224672001, 1)]
    [InlineData(7, 10, 0.3967781475, 0.8922087326)]
    [InlineData(81, 263, 0.2552885199, 0.3662095770)]
    [InlineData(1, 1, 0.2065493144, 1)]
    public void The_interval_is_wilsons(int hits, int trials, double low, double high)
    {
        (double Low, double High) interval = new Proportion(trials, hits).Interval();

        Assert.Equal(low, interval.Low, 1e-9);
        Assert.Equal(high, interval.High, 1e-9);
    }

    [Fact] // R 4.2.2: prop.test(7, 10, correct = FALSE, conf.level = 0.9)$conf.int
    public void It_may_be_of_another_level()
    {
        (double low, double high) = new Proportion(10, 7).Interval(0.9);

        Assert.Equal((0.4416997959, 0.8731234161), (Math.Round(low, 10), Math.Round(high, 10)));
    }
}
