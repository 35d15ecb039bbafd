using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class WholeNumberTextTests
{
    [Theory]
    [InlineData("1", 1)]
    [InlineData("15", 15)]
    [InlineData("26", 26)]
    public void Reads_a_count_and_both_ends(string text, int count) =>
        Assert.Equal(count, WholeNumberText.Read("--weeks", text, 1, 26).Value?.Count);

    [Theory]
    [InlineData("0")]
    [InlineData("27")]
    [InlineData("-1")]
    [InlineData("1.5")]
    [InlineData("1e1")]
    [InlineData("99999999999999999999")]
    [InlineData("\u0661")]
    [InlineData("six")]
    [InlineData("")]
    [InlineData(null)]
    public void Refuses_what_is_no_count_in_the_range(string? text) =>
        Assert.Equal("a whole number from 1 to 26", Assert.Single(WholeNumberText.Read("--weeks", text, 1, 26).Problems).Allowed);
}
