using Progression.Core.Entry;
using Progression.Core.Library;

namespace Progression.Core.Tests.Entry;

public sealed class PadTextTests
{
    [Theory]
    [InlineData("7.6x12.7cm", 7.6, 12.7)]
    [InlineData("7.6 x 12.7 cm", 7.6, 12.7)]
    [InlineData("7.6cm x 12.7cm", 7.6, 12.7)]
    [InlineData("76 X 127 mm", 7.6, 12.7)]
    [InlineData("7.6\u00D712.7 cm", 7.6, 12.7)]
    public void Reads_two_sides(string text, double width, double height)
    {
        PadSize pad = PadText.Read("--pad", text).Value!;

        Assert.Equal((width, height), (pad.Width.Centimetres, pad.Height!.Centimetres));
    }

    [Theory]
    [InlineData("round 7 cm")]
    [InlineData("round 7cm")]
    [InlineData("Round 70 mm")]
    public void Reads_a_diameter(string text)
    {
        PadSize pad = PadText.Read("--pad", text).Value!;

        Assert.Equal(7, pad.Width.Centimetres);
        Assert.Null(pad.Height);
    }

    [Theory]
    [InlineData("0x12.7cm")]
    [InlineData("7.6x0 cm")]
    [InlineData("round 0 cm")]
    [InlineData("-7.6x12.7cm")]
    [InlineData("7.6x12.7")]
    [InlineData("7.6x12.7 in")]
    [InlineData("7.6 cm")]
    [InlineData("7,6x12,7cm")]
    [InlineData("51x5cm")]
    [InlineData("7.6x12.7x3cm")]
    [InlineData("round")]
    [InlineData("round round 7 cm")]
    [InlineData("")]
    [InlineData(null)]
    public void Refuses_a_pad_without_area_unit_or_sense(string? text)
    {
        Problem problem = Assert.Single(PadText.Read("--pad", text).Problems);

        Assert.Equal("--pad", problem.Field);
        Assert.Contains("from 0.1 to 50 cm", problem.Allowed, StringComparison.Ordinal);
    }

    [Fact]
    public void Hints_at_the_decimal_point() =>
        Assert.Contains("decimal comma", PadText.Read("--pad", "7,6x12,7cm").Problems[0].Wrong, StringComparison.Ordinal);
}
