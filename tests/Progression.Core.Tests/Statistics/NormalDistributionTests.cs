using Progression.Core.Statistics;

namespace Progression.Core.Tests.Statistics;

public sealed class NormalDistributionTests
{
    [Theory] // NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.1 tabulates the area from 0 to x; 0.5 is added here. Figures from memory.
    [InlineData(0, 0.50000)]
    [InlineData(0.5, 0.69146)]
    [InlineData(1, 0.84134)]
    [InlineData(1.96, 0.97500)]
    [InlineData(2, 0.97725)]
    [InlineData(3, 0.99865)]
    public void Probability_agrees_with_the_printed_table(double x, double printed) =>
        Assert.Equal(printed, NormalDistribution.Probability(x), 5e-6);

    [Theory] // Python 3.11.7, statistics.NormalDist().cdf; both sides of the place where the series gives way to the tail.
    [InlineData(-8, 6.106226635438361e-16, 2e-2)] // that one is 1 - erf and keeps few digits so far out
    [InlineData(-5, 2.8665157186802404e-07, 1e-9)]
    [InlineData(-3.0000001, 0.0013498975884453368, 1e-11)]
    [InlineData(-3, 0.0013498980316301035, 1e-12)]
    [InlineData(-1, 0.15865525393145707, 1e-13)]
    [InlineData(0.5, 0.6914624612740131, 1e-13)]
    [InlineData(4, 0.9999683287581669, 1e-13)]
    public void Probability_agrees_with_another_program(double x, double expected, double relative) =>
        Assert.Equal(expected, NormalDistribution.Probability(x), relative * expected);

    [Theory] // Abramowitz and Stegun, table 26.2 gives Q(x) for large x as -log10 Q: 10 -> 23.11805, 20 -> 88.56010. From memory.
    [InlineData(-10, 23.11805)]
    [InlineData(-20, 88.56010)]
    public void The_far_tail_keeps_its_digits(double x, double minusLog) =>
        Assert.Equal(minusLog, -Math.Log10(NormalDistribution.Probability(x)), 5e-6);

    [Theory] // The multipliers of the measurement-error literature; NIST/SEMATECH 1.3.6.7.1, more digits from Python 3.11.7 statistics.NormalDist().inv_cdf.
    [InlineData(0.95, 1.644854)]
    [InlineData(0.975, 1.959964)]
    [InlineData(0.9, 1.281552)]
    [InlineData(0.8, 0.841621)]
    [InlineData(0.05, -1.644854)]
    public void Quantile_agrees_with_the_usual_multipliers(double probability, double expected) =>
        Assert.Equal(expected, NormalDistribution.Quantile(probability), 5e-7);

    [Theory] // Python 3.11.7, statistics.NormalDist().inv_cdf.
    [InlineData(1e-300, -37.0470962993612)]
    [InlineData(1e-100, -21.27345356096532)]
    [InlineData(1e-20, -9.262340089798405)]
    [InlineData(1e-10, -6.361340902404056)]
    [InlineData(0.001, -3.090232306167813)]
    [InlineData(0.3, -0.5244005127080407)]
    [InlineData(0.75, 0.6744897501960817)]
    [InlineData(0.999, 3.090232306167813)]
    [InlineData(0.9999999999, 6.361340889697421)]
    public void Quantile_agrees_with_another_program_far_into_the_tails(double probability, double expected) =>
        Assert.Equal(expected, NormalDistribution.Quantile(probability), 1e-12 * Math.Abs(expected));

    // Worked example 22 of the project's reference: Kornuijt 2019, Musculoskelet Surg: median 110 deg, 8 of 137 knees under 90 deg; if normal, a spread of 12.75 deg.
    [Fact]
    public void A_share_under_a_limit_gives_the_spread_of_a_cohort() =>
        Assert.Equal(12.75, (110 - 90) / -NormalDistribution.Quantile(8.0 / 137), 0.01);

    [Fact]
    public void Half_lies_under_zero() => Assert.Equal(0, NormalDistribution.Quantile(0.5), 1e-15);

    [Fact]
    public void Nothing_and_everything_lie_at_infinity()
    {
        Assert.Equal(double.NegativeInfinity, NormalDistribution.Quantile(0));
        Assert.Equal(double.PositiveInfinity, NormalDistribution.Quantile(1));
        Assert.Equal(0, NormalDistribution.Probability(double.NegativeInfinity));
        Assert.Equal(1, NormalDistribution.Probability(double.PositiveInfinity));
    }

    [Theory]
    [InlineData(-1e-300)]
    [InlineData(1.0000000000000002)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_probability_is_refused(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalDistribution.Quantile(probability));

    [Fact]
    public void Not_a_number_stays_one() => Assert.True(double.IsNaN(NormalDistribution.Probability(double.NaN)));

    [Fact]
    public void Quantile_undoes_probability()
    {
        for (double x = -30; x <= 5; x += 0.37)
        {
            Assert.Equal(x, NormalDistribution.Quantile(NormalDistribution.Probability(x)), 1e-9);
        }
    }

    [Theory] // Guard bands, criterion 90, truth 86, standard error 4: share passed falsely. Worked example 18 of the project's reference, whose guards are rounded.
    [InlineData(0, 0.1587)]
    [InlineData(2, 0.0668)]
    [InlineData(5.13, 0.0113)]
    [InlineData(6.58, 0.0041)]
    public void False_pass_falls_with_the_guard_band(double guard, double expected) =>
        Assert.Equal(expected, NormalDistribution.Probability((86 - 90 - guard) / 4), 1e-4);
}
