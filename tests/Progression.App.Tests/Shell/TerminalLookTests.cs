using Progression.App.Shell;
using Progression.Records.Settings;

namespace Progression.App.Tests.Shell;

public sealed class TerminalLookTests
{
    [Theory]
    [InlineData(TerminalColours.Sixteen)]
    [InlineData(TerminalColours.Full, "COLORTERM=truecolor")]
    [InlineData(TerminalColours.Full, "COLORTERM=24bit")]
    [InlineData(TerminalColours.Sixteen, "COLORTERM=yes")]
    [InlineData(TerminalColours.None, "NO_COLOR=1")]
    [InlineData(TerminalColours.None, "NO_COLOR=1", "COLORTERM=truecolor")]
    [InlineData(TerminalColours.Sixteen, "NO_COLOR=")]
    public void Colours_follow_the_environment(TerminalColours expected, params string[] variables) =>
        Assert.Equal(expected, TerminalLook.From(Environment(variables)).Colours);

    [Theory]
    [InlineData(true)]
    [InlineData(false, "LANG=en_GB.UTF-8")]
    [InlineData(false, "LANG=C.utf8")]
    [InlineData(true, "LANG=C")]
    [InlineData(true, "LANG=C.UTF-8", "LC_ALL=C")]
    [InlineData(false, "LANG=C", "LC_CTYPE=C.UTF-8")]
    [InlineData(false, "LANG=C.UTF-8", "LC_ALL=")]
    public void Symbols_need_a_utf8_locale(bool sevenBit, params string[] variables) =>
        Assert.Equal(sevenBit, TerminalLook.From(Environment(variables)).SevenBitOnly);

    [Fact]
    public void What_the_person_has_set_goes_before_what_the_terminal_announces()
    {
        PersonalSettings set = new() { Colours = ColourChoice.None, Symbols = SymbolChoice.SevenBit, Background = BackgroundChoice.Light };
        Assert.Equal(new TerminalLook(TerminalColours.None, true, BackgroundChoice.Light), TerminalLook.From(Environment("COLORTERM=truecolor", "LANG=C.UTF-8"), set));
        PersonalSettings other = new() { Colours = ColourChoice.Full, Symbols = SymbolChoice.Unicode };
        Assert.Equal(new TerminalLook(TerminalColours.Full, false), TerminalLook.From(Environment("LANG=C"), other));
    }

    [Fact]
    public void A_pipe_and_a_dumb_terminal_are_refused_with_a_reason()
    {
        Assert.Null(TerminalNeeds.WhyNot(Environment("TERM=xterm"), true, true));
        Assert.Contains("dumb", TerminalNeeds.WhyNot(Environment("TERM=dumb"), true, true), StringComparison.Ordinal);
        Assert.Contains("standard input", TerminalNeeds.WhyNot(Environment("TERM=xterm"), false, true), StringComparison.Ordinal);
        Assert.Contains("standard output", TerminalNeeds.WhyNot(Environment("TERM=xterm"), true, false), StringComparison.Ordinal);
    }

    private static Func<string, string?> Environment(params string[] variables)
    {
        Dictionary<string, string> values = variables.Select(variable => variable.Split('=')).ToDictionary(pair => pair[0], pair => pair[1]);
        return values.GetValueOrDefault;
    }
}
