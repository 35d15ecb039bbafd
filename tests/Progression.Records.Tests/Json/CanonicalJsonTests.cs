using Progression.Records.Json;

namespace Progression.Records.Tests.Json;

public sealed class CanonicalJsonTests
{
    // RFC 8785, section 3.2.3: names sort by UTF-16 code units, so the emoji stands before the Hebrew letter.
    [Fact]
    public void Sorts_names_as_the_standard_s_example_does()
    {
        const string input = """
            {"\u20ac": "Euro Sign", "\r": "Carriage Return", "\ufb33": "Hebrew Letter Dalet With Dagesh", "1": "One",
             "\ud83d\ude00": "Emoji: Grinning Face", "\u0080": "Control", "\u00f6": "Latin Small Letter O With Diaeresis"}
            """;
        const string expected = "{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\",\"\u00f6\":\"Latin Small Letter O With Diaeresis\","
            + "\"\u20ac\":\"Euro Sign\",\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}";

        Assert.Equal(expected, CanonicalJson.Of(input));
    }

    // RFC 8785, section 3.2.2, its string and literals; its numbers are left as written, which is where we differ.
    [Fact]
    public void Writes_strings_and_literals_as_the_standard_s_example_does_and_keeps_numbers()
    {
        const string input = """
            { "numbers": [333333333.33333329, 1E30, 4.50, 2e-3],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false] }
            """;
        const string expected = """{"literals":[null,true,false],"numbers":[333333333.33333329,1E30,4.50,2e-3],"string":"€$\u000f\nA'B\"\\\\\"/"}""";

        Assert.Equal(expected, CanonicalJson.Of(input));
    }

    [Fact]
    public void Is_its_own_canonical_form()
    {
        string once = CanonicalJson.Of("""{"b":[{"z":1,"a":"\t\u001f\u007f\u2028"}],"a":{}}""");

        Assert.Equal("{\"a\":{},\"b\":[{\"a\":\"\\t\\u001f\u007f\u2028\",\"z\":1}]}", once);
        Assert.Equal(once, CanonicalJson.Of(once));
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("{} {}")]
    [InlineData("""{"a":1,}""")]
    [InlineData("""{"a":1/*x*/}""")]
    [InlineData("""{"a":01}""")]
    [InlineData("""{"a":NaN}""")]
    [InlineData("""{"a":1,"a":1}""")]
    [InlineData("""{"a":1,"\u0061":1}""")]
    [InlineData("""[{"b":[{"a":1,"a":2}]}]""")]
    [InlineData("""{"a":"\ud800"}""")]
    [InlineData("""{"\udc00":1}""")]
    public void Refuses_what_has_no_single_meaning(string json)
    {
        Assert.False(CanonicalJson.TryOf(json, out _, out string? problem));
        Assert.NotEmpty(problem);
        Assert.Throws<FormatException>(() => CanonicalJson.Of(json));
    }

    [Fact]
    public void Allows_sixty_four_levels_and_no_more()
    {
        Assert.Equal(128, CanonicalJson.Of(new string('[', 64) + new string(']', 64)).Length);
        Assert.False(CanonicalJson.TryOf(new string('[', 65) + new string(']', 65), out _, out _));
    }
}
