using Progression.Core.Entry;

namespace Progression.Core.Tests.Entry;

public sealed class WordTextTests
{
    [Fact]
    public void Reads_a_word_without_regard_to_case() =>
        Assert.True(WordText.Read("--count-last-rest", " Yes ", ("yes", true), ("no", false)).Value?.Value);

    [Theory]
    [InlineData("maybe")]
    [InlineData("")]
    [InlineData(null)]
    public void Names_the_accepted_words(string? text) =>
        Assert.Equal("one of yes, no", Assert.Single(WordText.Read("f", text, ("yes", true), ("no", false)).Problems).Allowed);
}
