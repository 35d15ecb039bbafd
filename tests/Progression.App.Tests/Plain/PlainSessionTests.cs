using Progression.App.Actions;
using Progression.App.Grid;
using Progression.App.Plain;
using Progression.App.Tests.Grid;

namespace Progression.App.Tests.Plain;

public sealed class PlainSessionTests
{
    [Theory]
    [InlineData("read findings\n", 0)]
    [InlineData("set 95\n", PlainSession.EndedUnsaved)]
    [InlineData("set 95\nq\n", 0)]
    [InlineData("set 95\nend\n", 0)]
    [InlineData("set 95\nundo\n", 0)]
    [InlineData("", 0)]
    public void The_end_of_the_input_ends_it_and_says_whether_anything_was_unsaved(string script, int code) => Assert.Equal(code, Run(script, sevenBit: false).Code);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Only_printable_text_and_line_feeds_are_written_whatever_comes_in(bool sevenBit)
    {
        Random random = new(20261125);
        char[] hostile = ['\x1B', '\x07', '\x08', '\x00', '\x7F', '\x85', '\x9B', '\u202E', '\u2066', '\u200B', '\uFEFF', '\uD800', 'é', '─', '→', '[', '3', '1', 'm', ']', '0', ';', ' '];
        string script = string.Join('\n', Enumerable.Range(0, 300).Select(at =>
            (at % 3 == 0 ? "set " : at % 3 == 1 ? "" : "go ") + string.Concat(Enumerable.Range(0, random.Next(1, 30)).Select(_ => hostile[random.Next(hostile.Length)]))));
        string output = Run(script, sevenBit).Output;
        Assert.NotEmpty(output);
        Assert.DoesNotMatch(sevenBit ? @"[^\x20-\x7E\n]" : @"[\x00-\x09\x0B-\x1F\x7F-\x9F\u200B-\u200F\u2028-\u202E\u2066-\u2069\uFEFF\u2190-\u21FF\u2500-\u25FF\u2800-\u28FF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])", output);
    }

    [Fact]
    public void A_line_without_end_is_not_taken()
    {
        (int code, string output) = Run(new string('x', PlainSession.Longest + 1) + "\n", sevenBit: true);
        Assert.Equal(0, code);
        Assert.Contains("too long and not taken", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_stand_for_symbols_and_drawn_lines_are_left_out()
    {
        Assert.Equal("95 to 100, at least 5 degrees", PlainLetters.Line("│ 95–100, ≥ 5 deg ──▼", sevenBit: true));
        Assert.Equal("warning: over its limit", PlainLetters.Line("? warning: over its limit", sevenBit: false));
        Assert.Equal("caf?", PlainLetters.Line("café", sevenBit: true));
        Assert.Equal("café", PlainLetters.Line("café", sevenBit: false));
    }

    private static (int Code, string Output) Run(string script, bool sevenBit)
    {
        using StringReader input = new(script);
        using StringWriter output = new();
        int code = PlainSession.Run(new ScreenStack(new Frame<GridState>(GridScreen.Definition, Sample.State)), input, output, sevenBit);
        return (code, output.ToString());
    }
}
