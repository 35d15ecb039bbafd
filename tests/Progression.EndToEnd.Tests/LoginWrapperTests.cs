using System.Diagnostics;

namespace Progression.EndToEnd.Tests;

/// <summary>The wrapper that an administrator gives to an account, around the program under test.</summary>
public sealed class LoginWrapperTests
{
    // SIGKILL (9) leaves a program no last word; the shell tells it as 128 + 9.
    [Fact]
    public void A_killed_program_leaves_a_terminal_that_is_as_it_was()
    {
        using TerminalWindow window = new();
        window.LineThenModes($"sh {Wrapper(window)}");
        window.WaitFor("There is no case in this store yet");
        Process.GetProcessById(int.Parse(File.ReadAllText(Path.Combine(window.Folder, "program")), null)).Kill();
        string screen = window.WaitFor("code 137");
        window.WaitUntil(text => text.Contains("\nicanon", StringComparison.Ordinal), "the line as it was");
        Assert.Contains("ended from outside", screen, StringComparison.Ordinal);
        Assert.Equal(("0", "1", "0"), (window.Mode("alternate_on"), window.Mode("cursor_flag"), window.Mode("mouse_any_flag")));
    }

    [Fact]
    public void It_reads_no_settings_of_the_screen_library_and_passes_words_and_exit_code_on()
    {
        using TerminalWindow window = new();
        string wrapper = Wrapper(window, "echo \"[$HOME] [$PWD] [${TUI_CONFIG-none}] $*\"; exit 66");
        window.Line($"TUI_CONFIG=x sh {wrapper} open NO-01; echo code $?");
        Assert.Contains("[/] [/] [none] open NO-01", window.WaitFor("code 66"), StringComparison.Ordinal);
    }

    /// <summary>A copy of the wrapper beside a stand-in that becomes the program, having written down its process number.</summary>
    private static string Wrapper(TerminalWindow window, string? program = null)
    {
        string folder = Directory.CreateDirectory(Path.Combine(window.Folder, "installed")).FullName;
        string wrapper = Path.Combine(folder, "progression-login");
        string standIn = Path.Combine(folder, "progression");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "progression-login"), wrapper);
        // A copy of it may be run, as it may; then it gets the words of the stand-in.
        File.Copy(wrapper, standIn);
        File.WriteAllText(standIn, $"#!/bin/sh\n{program ?? $"echo $$ >{window.Folder}/program; exec {TerminalWindow.Program} \"$@\""}\n");
        return wrapper;
    }
}
