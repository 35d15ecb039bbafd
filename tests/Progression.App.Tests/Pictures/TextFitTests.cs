using Progression.App.Pictures;

namespace Progression.App.Tests.Pictures;

public sealed class TextFitTests
{
    [Theory]
    [InlineData("knee", 6, "knee  ")]
    [InlineData("knee", 4, "knee")]
    [InlineData("knee", 3, "kn…")]
    [InlineData("knee", 1, "…")]
    [InlineData("knee", 0, "")]
    [InlineData("漢字", 3, "漢…")]
    [InlineData("漢字", 2, "… ")]
    public void Cuts_or_fills_to_exact_columns(string text, int width, string expected) =>
        Assert.Equal(expected, TextFit.Exactly(text, width));

    [Fact]
    public void Takes_the_longest_wording_that_fits() =>
        Assert.Equal("95 deg ", TextFit.Longest(["95 degrees", "95 deg", "95"], 7));

    [Fact]
    public void Cuts_the_shortest_wording_when_none_fits() => Assert.Equal("9…", TextFit.Longest(["95 degrees", "955"], 2));

    [Fact]
    public void Wraps_at_spaces_and_breaks_only_what_is_too_long() =>
        Assert.Equal(["the knee", "straighten", "s"], TextFit.Wrap("the knee straightens", 10));

    [Fact]
    public void Nothing_wraps_to_one_empty_line() => Assert.Equal([""], TextFit.Wrap("", 10));
}
