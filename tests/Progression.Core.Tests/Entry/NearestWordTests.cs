using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class NearestWordTests
{
    private static readonly string[] Known = ["date", "rater", "device", "extension_active", "extension_passive"];

    [Theory]
    [InlineData("dat", "date")]
    [InlineData("adte", "date")]
    [InlineData("DATE", "date")]
    [InlineData("extention_active", "extension_active")]
    [InlineData("exension_pasive", "extension_passive")]
    public void Offers_the_word_that_was_meant(string typed, string expected) => Assert.Equal(expected, NearestWord.To(typed, Known));

    [Theory]
    [InlineData("")]
    [InlineData("zz")]
    [InlineData("bodymass")]
    public void Offers_nothing_when_no_word_is_near(string typed) => Assert.Null(NearestWord.To(typed, Known));

    [Fact]
    public void A_very_long_text_is_answered_at_once() => Assert.Null(NearestWord.To(new string('x', 1_000_000), Known));
}
