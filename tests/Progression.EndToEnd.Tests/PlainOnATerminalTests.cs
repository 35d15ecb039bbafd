namespace Progression.EndToEnd.Tests;

/// <summary>Line mode as it is really used: by a script, on a terminal that cannot place text, and killed in the middle.</summary>
public sealed class PlainOnATerminalTests
{
    [Theory]
    [InlineData("C")]
    [InlineData("C.UTF-8")]
    public void A_script_is_answered_in_plain_lines_and_unsaved_work_is_kept(string locale)
    {
        using TerminalWindow window = new(locale: locale);
        window.LineThenModes($"printf 'demo\\ngo flexion week 4\\nset 77\\nread\\nwhy\\nback\\nfindings\\n' | {TerminalWindow.Program} plain > said");
        window.WaitFor("code 1");
        byte[] said = File.ReadAllBytes(Path.Combine(window.Folder, "said"));
        Assert.All(said, one => Assert.True(one is (byte)'\n' or (>= 0x20 and <= 0x7E) || (one >= 0x80 && locale != "C"), $"byte {one:X2}"));
        Assert.Contains("set to 77 degrees", System.Text.Encoding.UTF8.GetString(said), StringComparison.Ordinal);

        window.LineThenModes($"printf 'recover\\nsave\\n' | {TerminalWindow.Program} plain LARK-03 --store progression-demo");
        window.WaitFor("Saved.");
        window.WaitFor("code 0");
    }

    [Fact]
    public void A_terminal_that_cannot_place_text_gets_line_mode_and_is_told_so()
    {
        using TerminalWindow window = new();
        window.LineThenModes($"TERM=dumb {TerminalWindow.Program}");
        window.WaitFor("so this is line mode");
        window.WaitFor("There is no case yet");
        window.Line("demo");
        window.WaitFor("LARK-03 left knee");
        Assert.Equal("0", window.Mode("alternate_on"));
        window.Line("end");
        window.WaitFor("code 0");
    }

    [Fact]
    public void Killed_between_two_lines_it_has_kept_the_last()
    {
        using TerminalWindow window = new();
        window.LineThenModes($"{TerminalWindow.Program} demo > listed; {TerminalWindow.Program} plain LARK-03 --store progression-demo");
        window.WaitFor("the present week: ");
        window.Line("set 78");
        window.WaitFor("1 change unsaved.");
        window.Line("go week 5");
        window.WaitFor("Flexion, week 5");
        window.Drop();
        using TerminalWindow again = new(home: window.Folder);
        again.LineThenModes($"{TerminalWindow.Program} plain LARK-03 --store progression-demo");
        again.WaitFor("Unsaved work was kept");
        again.Line("recover");
        again.WaitFor("78 degrees");
    }
}
