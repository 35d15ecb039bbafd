using Progression.Exchange.Fhir;

namespace Progression.Exchange.Tests.Fhir;

/// <summary>Our units against another reader of UCUM, which holds the table of the standard.</summary>
public sealed class UcumUnitTests
{
    [Theory]
    [InlineData("degrees")]
    [InlineData("lb")]
    [InlineData("Nm")]
    [InlineData("KG")]
    public void The_other_reader_knows_a_wrong_unit(string code) => Assert.False(BundleChecks.IsUcum(code));

    [Fact]
    public void Every_measure_of_the_library_leaves_with_a_unit_of_UCUM() =>
        Assert.All(InventedOrders.Library.Measures.Values, measure =>
            Assert.True(BundleChecks.IsUcum(UcumUnit.Of(measure.Id, measure.Unit)?.Code ?? "none"), measure.Id));

    [Theory]
    [InlineData("flexion_active", "deg", "deg")]
    [InlineData("quadriceps_torque", "Nm", "N.m")]
    [InlineData("straight_leg_raises", "1", "{repetitions}")]
    [InlineData("pain_rest", "1", "{score}")]
    [InlineData("quadriceps_torque_per_mass", "Nm/kg", "N.m/kg")]
    public void A_unit_is_written_as_UCUM_does(string measure, string unit, string code) => Assert.Equal(code, UcumUnit.Of(measure, unit)!.Code);

    [Fact]
    public void A_unit_of_a_clinics_own_has_no_code() => Assert.Null(UcumUnit.Of("own", "hand widths"));

    [Theory]
    [InlineData("Nm", "N.m")]
    [InlineData("N", "N")]
    [InlineData("cm", "cm")]
    [InlineData("m", "m")]
    [InlineData("s", "s")]
    [InlineData("m/s", "m/s")]
    [InlineData("kg", "kg")]
    public void Every_conversion_agrees_with_the_other_reader(string unit, string code) =>
        Assert.All(UcumUnit.Allowed(unit).Split(", "), other => Assert.Equal((double)BundleChecks.Ratio(other, code), (double)UcumUnit.Factor(other, unit)!.Value, 9));

    // NIST Special Publication 811, appendix B.8.
    [Theory]
    [InlineData("[lb_av]", "kg", "0.45359237")]
    [InlineData("[ft_i]", "m", "0.3048")]
    [InlineData("[in_i]", "cm", "2.54")]
    [InlineData("[lbf_av]", "N", "4.4482216152605")]
    public void A_conversion_is_exact(string code, string unit, string factor) =>
        Assert.Equal(decimal.Parse(factor, System.Globalization.CultureInfo.InvariantCulture), UcumUnit.Factor(code, unit));

    [Theory]
    [InlineData("degrees", "deg")]
    [InlineData("rad", "deg")]
    [InlineData("lb", "kg")]
    [InlineData("Kg", "kg")]
    [InlineData("J", "Nm")]
    [InlineData("%", "1")]
    [InlineData("{}", "1")]
    [InlineData("{a}{b}", "1")]
    [InlineData("", "1")]
    [InlineData("N.m", "N")]
    public void What_is_no_such_unit_is_not_converted(string code, string unit) => Assert.Null(UcumUnit.Factor(code, unit));
}
