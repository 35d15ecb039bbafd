using Progression.App.Compare;
using Progression.App.Pictures;

namespace Progression.App.Tests.Compare;

public sealed class SparklineTests
{
    [Fact]
    public void Better_is_up_whichever_way_the_measure_goes()
    {
        Assert.Equal("▁▅█", Sparkline.Of([60, 80, 100], higherIsBetter: true));
        Assert.Equal("▁▅█", Sparkline.Of([20, 10, 0], higherIsBetter: false));
    }

    [Fact]
    public void A_visit_without_a_value_leaves_a_gap() => Assert.Equal("▁·█", Sparkline.Of([60, null, 100], higherIsBetter: true));

    [Fact]
    public void Values_that_are_alike_make_no_slope() => Assert.Equal("▅▅", Sparkline.Of([60, 60], higherIsBetter: true));

    [Fact]
    public void Nothing_measured_is_all_gaps() => Assert.Equal("··", Sparkline.Of([null, null], higherIsBetter: true));

    [Fact]
    public void In_seven_bits_each_height_has_a_letter_of_its_own()
    {
        string ascii = SevenBit.Of("▁▂▃▄▅▆▇█·");
        Assert.Equal(9, ascii.Distinct().Count());
        Assert.DoesNotContain('?', ascii);
    }
}
