using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>The shell's guards, with the smallest screen on a real terminal.</summary>
public sealed class ShellOnATerminalTests
{
    [Fact]
    public void An_idle_screen_sends_no_byte()
    {
        using TerminalWindow window = Started();
        window.Quiet(1500);
        long before = window.RawBytes;
        Thread.Sleep(3000);
        Assert.Equal(before, window.RawBytes);
    }

    [Fact]
    public void A_key_costs_less_than_a_kilobyte()
    {
        using TerminalWindow window = Started();
        window.Quiet();
        long before = window.RawBytes;
        window.Keys("Up");
        window.WaitFor("count 1");
        window.Quiet();
        Assert.InRange(window.RawBytes - before, 1, 1023);
    }

    // ECMA-48 cursor keys, and the form terminals send in application mode (DEC private mode 1).
    [Fact]
    public void Both_forms_of_an_arrow_key_are_understood()
    {
        using TerminalWindow window = Started();
        window.Bytes("1b", "5b", "41");
        window.WaitFor("count 1");
        window.Bytes("1b", "4f", "41");
        window.WaitFor("count 2");
    }

    [Fact]
    public void Esc_and_control_z_and_control_c_do_not_end_the_program()
    {
        using TerminalWindow window = Started();
        window.Keys("Escape");
        window.WaitFor("Esc does nothing here");
        window.Keys("C-z");
        window.WaitFor("Ctrl+Z does nothing here");
        window.Keys("C-c");
        window.WaitFor("Ctrl+C does nothing here");
    }

    [Fact]
    public void Quitting_gives_the_terminal_back()
    {
        using TerminalWindow window = Started();
        window.Keys("Up", "C-q");
        window.WaitFor("left at 1");
        AssertRestored(window, "code 0");
    }

    [Fact]
    public void One_program_can_show_one_screen_after_another()
    {
        using TerminalWindow window = new();
        window.LineThenModes($"{TerminalWindow.Probe} twice d");
        window.WaitFor("count 0");
        window.Keys("Up", "C-q");
        window.WaitFor("count 100");
        window.Quiet();
        window.Keys("Up", "Up");
        window.WaitFor("count 102");
        window.Quiet(1500);
        long before = window.RawBytes;
        Thread.Sleep(1000);
        Assert.Equal(before, window.RawBytes);
        window.Keys("C-q");
        window.WaitFor("left at 102");
        AssertRestored(window, "code 0");
    }

    [Theory]
    [InlineData("TERM", 143)]
    [InlineData("INT", 130)]
    [InlineData("QUIT", 131)]
    [InlineData("HUP", 129)]
    public void A_signal_keeps_the_work_and_gives_the_terminal_back(string signal, int exitCode)
    {
        using TerminalWindow window = Started();
        window.Keys("Up");
        window.WaitFor("count 1");
        Process.Start("kill", ["-s", signal, $"{window.Child()}"]).WaitForExit();
        AssertRestored(window, $"code {exitCode}");
        Assert.Equal("kept 1\n", File.ReadAllText(Path.Combine(window.Folder, "d")));
    }

    [Fact]
    public void A_dropped_line_keeps_the_work_and_ends_the_program_within_two_seconds()
    {
        using TerminalWindow window = Started();
        window.Keys("Up");
        window.WaitFor("count 1");
        int program = window.Child();
        window.Drop();
        Thread.Sleep(2000);
        Assert.False(IsRunning(program), "still running two seconds after the line was dropped");
        Assert.Equal("kept 1\n", File.ReadAllText(Path.Combine(window.Folder, "d")));
    }

    [Fact]
    public void A_dropped_line_is_noticed_even_when_hang_ups_are_ignored()
    {
        using TerminalWindow window = new();
        window.Line($"trap '' HUP; {TerminalWindow.Probe} d");
        window.WaitFor("count 0");
        int program = window.Child();
        window.Drop();
        for (int second = 0; second < 9 && IsRunning(program); second++)
        {
            Thread.Sleep(1000);
        }
        Assert.False(IsRunning(program), "still running nine seconds after the line was dropped");
        Assert.Equal("kept 0\n", File.ReadAllText(Path.Combine(window.Folder, "d")));
    }

    [Theory]
    [InlineData("F8", "blown on the screen's thread")]
    [InlineData("F9", "blown on another thread")]
    public void An_error_of_the_program_gives_the_terminal_back_and_is_told(string key, string message)
    {
        using TerminalWindow window = Started();
        window.Keys(key);
        window.WaitFor(message);
        AssertRestored(window, "code 70");
        Assert.Equal("kept 0\n", File.ReadAllText(Path.Combine(window.Folder, "d")));
    }

    // On the probe's clock a minute is a second: blanked after two, ended after four.
    [Fact]
    public void A_session_nobody_types_into_is_warned_blanked_and_ended_with_the_work_kept()
    {
        using TerminalWindow window = new();
        window.LineThenModes($"{TerminalWindow.Probe} quick d");
        window.WaitFor("any key keeps it open");
        window.Keys("Up");
        window.WaitFor("count 1");
        string blank = window.WaitFor("blanked because nobody typed");
        Assert.DoesNotContain("count", blank, StringComparison.Ordinal);
        window.WaitFor("The session was ended because nobody typed for 4 minutes");
        AssertRestored(window, "code 0");
        Assert.Equal("kept 1\n", File.ReadAllText(Path.Combine(window.Folder, "d")));
    }

    [Fact]
    public void A_paste_whose_end_never_comes_holds_the_keys_up_for_a_second_only()
    {
        using TerminalWindow window = Started();
        window.Burst("\e[200~never ended");
        window.WaitFor("never ended", 3000);
        window.Keys("Up");
        window.WaitFor("count 1", 1000);
    }

    [Fact]
    public void A_paste_is_text_and_never_keys()
    {
        using TerminalWindow window = Started();
        window.Paste("30 deg\nq");
        string screen = window.WaitFor("30 deg");
        Assert.Contains("count 0", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void A_small_window_asks_for_room_and_comes_back()
    {
        using TerminalWindow window = Started();
        window.Resize(60, 20);
        window.WaitFor("60 columns");
        window.Resize(100, 30);
        window.WaitFor("count 0");
    }

    [Fact]
    public void Control_l_draws_over_what_something_else_wrote()
    {
        using TerminalWindow window = Started();
        window.Scribble("a message from elsewhere");
        window.WaitFor("a message from elsewhere");
        window.Keys("C-l");
        string screen = window.WaitUntil(text => !text.Contains("elsewhere", StringComparison.Ordinal), "the scribble to go");
        Assert.Contains("count 0", screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Sixteen_colours_are_the_default_and_no_mouse_is_asked_for()
    {
        using TerminalWindow window = Started();
        window.Quiet();
        Assert.DoesNotContain("[38;2;", window.Raw, StringComparison.Ordinal);
        Assert.Equal("0", window.Mode("mouse_any_flag"));
    }

    [Fact]
    public void No_colour_and_no_unicode_when_the_terminal_says_so()
    {
        using TerminalWindow window = new(locale: "C");
        window.Line($"NO_COLOR=1 {TerminalWindow.Probe} d");
        string screen = window.WaitFor("count 0");
        Assert.Contains("-----", screen, StringComparison.Ordinal);
        Assert.DoesNotContain("[36m", window.Raw, StringComparison.Ordinal);
        Assert.DoesNotContain("─", window.Raw, StringComparison.Ordinal);
    }

    [Fact]
    public void A_terminal_that_cannot_place_text_is_refused_with_a_reason()
    {
        using TerminalWindow window = new();
        window.Line($"TERM=dumb {TerminalWindow.Probe} d; echo code $?");
        window.WaitFor("TERM says this one is");
        window.WaitFor("code 64");
        Assert.Equal("0", window.Mode("alternate_on"));
    }

    private static TerminalWindow Started()
    {
        return TerminalWindow.Running($"{TerminalWindow.Probe} d", "count 0");
    }

    // A program that has ended may stay in the table as a zombie (Z) when nobody waits for it.
    private static bool IsRunning(int process)
    {
        string stat = $"/proc/{process}/stat";
        return File.Exists(stat) && !File.ReadAllText(stat).Contains(") Z ", StringComparison.Ordinal);
    }

    private static void AssertRestored(TerminalWindow window, string code)
    {
        string screen = window.WaitFor("icanon");
        Assert.Contains(code, screen, StringComparison.Ordinal);
        Assert.DoesNotContain("-icanon", screen, StringComparison.Ordinal);
        Assert.Equal("0", window.Mode("alternate_on"));
        Assert.Equal("0", window.Mode("mouse_any_flag"));
        Assert.Equal("1", window.Mode("cursor_flag"));
    }
}
