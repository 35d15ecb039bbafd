using Progression.Core.Measures;

namespace Progression.Core.Tests.Measures;

/// <summary>
/// Figures of the project's reference on measures, part 5.3 and worked examples 18 and 19: criterion 90 deg, true value 86, error 4 deg. Derived from the
/// normal distribution; the idea of the guard band is that of JCGM 106:2012 (from memory).
/// </summary>
public sealed class GuardBandTests
{
    [Theory]
    [InlineData(0.10, 5.13)]
    [InlineData(0.05, 6.58)]
    public void The_band_for_a_share_of_false_passes(double share, double degrees) => Assert.Equal(degrees, GuardBand.Width(share, 4), 0.005);

    [Theory] // Example 18.
    [InlineData(0, 0.1587)]
    [InlineData(2, 0.0668)]
    [InlineData(5.1262, 0.0113)]
    [InlineData(6.5794, 0.0041)]
    public void A_band_holds_back_a_knee_that_is_not_there_yet(double guard, double chance) => Assert.Equal(chance, GuardBand.Pass(-4, guard, 4), 0.00006);

    [Fact] // Example 19.
    public void Confirming_helps_and_looking_again_and_again_undoes_the_limit()
    {
        double once = GuardBand.Pass(-4, 0, 4);

        Assert.Equal(0.0252, GuardBand.PassEvery(once, 2), 0.00006);
        Assert.Equal(0.0786, GuardBand.PassOnMean(-4, 0, 4, 2), 0.00006);
        Assert.Equal(0.042, GuardBand.PassOnMean(-4, 0, 4, 3), 0.0005);
        Assert.Equal(0.4989, GuardBand.PassOnce(once, 4), 0.00006);
    }

    [Theory] // Part 5.3: truth just at the limit.
    [InlineData(0, 0.25)]
    [InlineData(2, 0.095)]
    [InlineData(4, 0.025)]
    [InlineData(5.13, 0.010)]
    public void Forward_and_back_again_by_chance_alone(double guard, double chance) => Assert.Equal(chance, GuardBand.ForwardAndBack(guard, 4), 0.0005);

    [Theory] // One reading 4 over with error 4 is one standard error: 15.87 % by the normal table; the mean of two, root 2 of them: 7.86 %.
    [InlineData(4, 4, 0.1587)]
    [InlineData(4, 2.8284, 0.0786)]
    [InlineData(0, 4, 0.5)]
    public void A_reading_alone_says_how_likely_the_criterion_is_not_met(double margin, double error, double chance) =>
        Assert.Equal(chance, GuardBand.NotMet(margin, error), 0.00006);
}
