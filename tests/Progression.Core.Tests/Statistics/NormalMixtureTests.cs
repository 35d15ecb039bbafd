using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class NormalMixtureTests
{
    private static readonly NormalMixture Two = new([new NormalPart(0.25, -3, 0.5), new NormalPart(0.75, 2, 1)]);

    [Fact] // By hand: mean 0.75 x 2 - 0.25 x 3; variance 0.25 x (0.25 + 14.0625) + 0.75 x (1 + 1.5625) about the mean 0.75.
    public void Mean_and_spread_are_those_of_the_parts_together()
    {
        Assert.Equal(0.75, Two.Mean, 1e-12);
        Assert.Equal(Math.Sqrt(5.5), Two.StandardDeviation, 1e-12);
        Assert.Equal(Math.Sqrt(5.5 + 4), Two.WithError(2).StandardDeviation, 1e-12);
    }

    [Fact] // Of one distribution alone it is the quantile of the table: 1.644854.
    public void One_part_alone_is_a_normal_distribution() => Assert.Equal(10 + (2 * 1.644854), new NormalMixture([new NormalPart(1, 10, 2)]).Quantile(0.95), 1e-5);

    [Theory]
    [InlineData(0.001)]
    [InlineData(0.2)]
    [InlineData(0.25)] // between two humps, where there is next to nothing
    [InlineData(0.5)]
    [InlineData(0.999)]
    public void Quantile_undoes_probability(double share)
    {
        Assert.Equal(share, Two.AtMost(Two.Quantile(share)), 1e-12);
        Assert.Equal(1 - share, Two.AtLeast(Two.Quantile(share)), 1e-12);
    }
}
