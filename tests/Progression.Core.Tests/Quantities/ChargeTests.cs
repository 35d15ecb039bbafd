using Progression.Core.Quantities;

namespace Progression.Core.Tests.Quantities;

public sealed class ChargeTests
{
    [Fact]
    public void Carries_its_unit_and_is_ordered_by_amount()
    {
        Assert.Equal("7.5 uC", Charge.FromMicrocoulombs(7.5).ToString());
        Assert.Equal(Charge.FromMicrocoulombs(15), Charge.FromMicrocoulombs(15));
        Assert.True(Charge.FromMicrocoulombs(7.5) < Charge.FromMicrocoulombs(15));
    }

    [Theory]
    [InlineData(-0.001)]
    [InlineData(1_000_000.001)]
    [InlineData(double.NaN)]
    public void Refuses_what_is_no_charge(double value) => Assert.Throws<ArgumentOutOfRangeException>(() => Charge.FromMicrocoulombs(value));

    [Theory]
    [InlineData(0)]
    [InlineData(1_000_000)]
    public void Takes_both_ends(double value) => Assert.Equal(value, Charge.FromMicrocoulombs(value).Microcoulombs);
}
