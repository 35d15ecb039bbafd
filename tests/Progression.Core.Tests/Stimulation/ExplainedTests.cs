using Progression.Core.Stimulation;

namespace Progression.Core.Tests.Stimulation;

public sealed class ExplainedTests
{
    private static readonly Explained A = Explained.Given("a", 6, "s");
    private static readonly Explained B = Explained.Given("b", 3, "s");
    private static readonly Explained C = Explained.Given("c", 2, "");

    [Fact]
    public void Writes_brackets_where_the_order_of_signs_needs_them_and_nowhere_else()
    {
        Assert.Equal("(a 6 s + b 3 s) x c 2", ((A + B) * C).Words);
        Assert.Equal("a 6 s - (b 3 s - c 2)", (A - (B - C)).Words);
        Assert.Equal("a 6 s - b 3 s - c 2", (A - B - C).Words);
        Assert.Equal("a 6 s / (b 3 s x c 2)", (A / (B * C)).Words);
        Assert.Equal("a 6 s / b 3 s / c 2", (A / B / C).Words);
        Assert.Equal("a 6 s + b 3 s x c 2", (A + (B * C)).Words);
        Assert.Equal("sqrt(a 6 s + b 3 s)", Explained.Sqrt(A + B).Words);
    }

    [Fact]
    public void Reckons_what_the_words_say()
    {
        Assert.Equal(18, ((A + B) * C).Value);
        Assert.Equal(5, (A - (B - C)).Value);
        Assert.Equal(1, (A / (B * C)).Value);
        Assert.Equal(3, Explained.Sqrt(A + B).Value);
    }

    [Fact]
    public void Names_each_missing_setting_once_in_order()
    {
        Explained gap = Explained.Given("gap", null, "s");

        Assert.Equal("not given: gap, other", (A + gap + (gap * Explained.Given("other", null, ""))).WhyNot);
        Assert.Null((A + gap).Value);
        Assert.Null((A + B).WhyNot);
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1260, "1260")]
    [InlineData(1000000, "1000000")]
    [InlineData(52.5, "52.5")]
    [InlineData(9.48683298, "9.4868")]
    [InlineData(1220.892, "1220.9")]
    [InlineData(0.000466224, "0.00046622")]
    [InlineData(-0.5, "-0.5")]
    public void Shows_five_significant_digits_and_whole_numbers_in_full(double value, string text) => Assert.Equal(text, Explained.Digits(value));
}
